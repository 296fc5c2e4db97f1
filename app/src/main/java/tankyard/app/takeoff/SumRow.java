package tankyard.app.takeoff;

/**
 * One of the sums.
 *
 * @param isTotal the one that counts
 */
record SumRow(String label, String amount, boolean isTotal) {}
