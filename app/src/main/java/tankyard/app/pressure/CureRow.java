package tankyard.app.pressure;

/**
 * One change that may help, as the table shows it; numbers to sort by, digits to read. A number
 * that is not known is NaN, and a dash.
 */
record CureRow(
    int place,
    String change,
    String care,
    String thingId,
    double least,
    String leastDigits,
    double most,
    String mostDigits,
    double room,
    String roomDigits,
    double gained,
    String gainedDigits,
    int toMend,
    double cost,
    String costDigits,
    String separator) {}
