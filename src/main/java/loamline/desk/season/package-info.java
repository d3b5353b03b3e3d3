/**
 * The Season step: what each zone needs, what a service brings, what to buy and when to spread it. What is worked out
 * comes from {@code loamline.season}; here it is kept current and put into words.
 */
@NullMarked
package loamline.desk.season;

import org.jspecify.annotations.NullMarked;
