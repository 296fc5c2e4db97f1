package tankyard.engine.quick.sums;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tankyard.engine.numeric.NumberTable;
import tankyard.engine.pipes.FittingLoss;
import tankyard.engine.quick.QuickInputException;

/** Fittings typed as {@code 3 elbow-90, 2 tee-branch, gate-valve}. */
final class FittingList {
  private static final Pattern ONE = Pattern.compile("(?:(\\d{1,4})\\s*[x*]?\\s*)?([a-z0-9-]+)");
  private static final Map<String, FittingLoss> KNOWN = known();

  private FittingList() {}

  static List<FittingLoss> read(String input, String typed) {
    List<FittingLoss> all = new ArrayList<>();
    for (String part : typed.split("[,;]")) {
      Matcher one = ONE.matcher(part.strip());
      FittingLoss fitting = one.matches() ? KNOWN.get(one.group(2)) : null;
      if (fitting == null) {
        throw new QuickInputException(
            "--"
                + input
                + ": \""
                + part.strip()
                + "\" is no count and fitting; known are "
                + String.join(", ", KNOWN.keySet())
                + ".");
      }
      int count = one.group(1) == null ? 1 : Integer.parseInt(one.group(1));
      for (int i = 0; i < count; i++) {
        all.add(fitting);
      }
    }
    return all;
  }

  static List<String> names() {
    return List.copyOf(KNOWN.keySet());
  }

  private static Map<String, FittingLoss> known() {
    NumberTable table = NumberTable.beside(FittingList.class, "fittings.csv");
    List<String> names = table.words("fitting");
    List<String> diameters = table.words("length_over_bore");
    List<String> fixed = table.words("fixed_k");
    Map<String, FittingLoss> known = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      known.put(
          names.get(i),
          diameters.get(i).isEmpty()
              ? new FittingLoss.FixedK(Double.parseDouble(fixed.get(i)))
              : new FittingLoss.EquivalentDiameters(Double.parseDouble(diameters.get(i))));
    }
    return known;
  }
}
