package tankyard.app.takeoff;

import java.math.BigDecimal;
import java.util.List;
import tankyard.engine.pricing.BillLine;

/**
 * A line of the bill as it is shown.
 *
 * @param causes ids of the drawn things
 * @param forWhat their names
 * @param price as digits, or why there is none
 * @param total as digits; empty where nothing is added up
 * @param sum the total to sort by; nothing where there is none
 * @param remark vendor, date, and what must be said with the price
 */
record BillRow(
    String text,
    List<String> causes,
    String forWhat,
    double quantity,
    String quantityDigits,
    String unit,
    String price,
    double unitPrice,
    String total,
    BigDecimal sum,
    BillLine.State state,
    String status,
    boolean stale,
    String remark) {}
