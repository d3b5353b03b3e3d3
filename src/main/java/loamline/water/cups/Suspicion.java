package loamline.water.cups;

import java.util.Optional;

/**
 * How much the cups speak against a head.
 *
 * @param head its place in the list
 * @param sure probability that it is at fault, 0 to 1, given that at most this one and those named before it are
 * @param fault the likeliest; empty if the head cannot be told from one that throws nothing into the cups
 * @param named whether it is more likely than not at fault
 */
record Suspicion(int head, double sure, Optional<Fault> fault, boolean named) {}
