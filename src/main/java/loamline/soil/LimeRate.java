package loamline.soil;

import loamline.account.Account;
import loamline.reference.NamedRow;

/**
 * A rate as a method gives it.
 *
 * @param method the method's row of {@code lime-methods.csv}
 * @param rate in the method's unit, 0 or more
 * @param depthM depth of the sample from which it was read
 */
record LimeRate(NamedRow method, double rate, double depthM, Account account) {}
