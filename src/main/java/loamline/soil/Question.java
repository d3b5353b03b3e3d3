package loamline.soil;

import loamline.account.Problem;

/**
 * Something that a laboratory's report leaves open or gets wrong, and what to fill in.
 *
 * @param code such as {@code LAB_UNIT_MISSING}
 * @param column the column of the file to look at
 * @param ask what is the matter and what to do
 * @param blocks whether the value is of no use until it is answered; else it only gives no dose
 */
record Question(String code, String column, String ask, boolean blocks) {
    Problem problem(LabValue value) {
        String message = column + ": " + value.element().key() + " of sample " + value.sample() + ": " + ask;
        return Problem.error(code, value.where(), message);
    }
}
