/**
 * How a number came about, and what is wrong with what was given: accounts, sources and problems.
 *
 * <p>Every number that a user acts on carries an {@link loamline.account.Account}; everything that an input
 * does wrong becomes a {@link loamline.account.Problem}, all of them and never only the first.
 */
@NullMarked
package loamline.account;

import org.jspecify.annotations.NullMarked;
