/**
 * What a soil test means: units and depth, ratings, lime, sulfur, gypsum, phosphorus and potassium, exchange, texture,
 * organic matter, salinity.
 *
 * <p>{@link loamline.soil.SoilReport#of} is the way in: values as a laboratory gave them in, one {@link
 * loamline.soil.SampleResult} a sample out. Formulas stand in their own classes as functions of numbers, each with its
 * source; figures stand in the tables of {@code reference}.
 *
 * <p>Result semantics:
 *
 * <ul>
 *   <li>Everything that a user acts on is an {@link loamline.soil.Advice}: given, with its account, or refused, with the
 *       reason and what to fill in. Nothing is computed from a value whose unit, extractant or depth is not known, and
 *       nothing is guessed in the place of it.
 *   <li>A range is applied only to values of its own extractant; there is no conversion between extractants.
 *   <li>No fertilizer, lime, sulfur or gypsum is below 0: what the soil has in plenty gives a need of 0. Lime and sulfur
 *       exclude each other.
 *   <li>Doses are kilograms or grams on a square metre; rounding is the business of whoever shows them.
 * </ul>
 */
@NullMarked
package loamline.soil;

import org.jspecify.annotations.NullMarked;
