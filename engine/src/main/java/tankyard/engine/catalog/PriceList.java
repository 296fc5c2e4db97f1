package tankyard.engine.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prices by item. An item that is not in it has no price, which is not a price of nothing. */
public final class PriceList {
  private static final PriceList EMPTY = new PriceList(Map.of());

  private final Map<String, Price> byItem;

  private PriceList(Map<String, Price> byItem) {
    this.byItem = byItem;
  }

  public static PriceList empty() {
    return EMPTY;
  }

  public static PriceList of(List<Price> prices) {
    return EMPTY.with(prices);
  }

  /** Adds prices; a later price of an item takes the place of the earlier. */
  public PriceList with(List<Price> more) {
    Map<String, Price> all = new LinkedHashMap<>(byItem);
    more.forEach(p -> all.put(p.itemId(), p));
    return new PriceList(all);
  }

  public Optional<Price> price(String itemId) {
    return Optional.ofNullable(byItem.get(itemId));
  }

  public List<Price> all() {
    return List.copyOf(byItem.values());
  }
}
