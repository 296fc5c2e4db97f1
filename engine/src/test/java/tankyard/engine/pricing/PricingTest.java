package tankyard.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Quote;
import tankyard.engine.takeoff.SmallBattery;
import tankyard.engine.takeoff.Takeoff;
import tankyard.engine.takeoff.TakeoffKind;
import tankyard.engine.takeoff.TakeoffLine;
import tankyard.engine.units.Fraction;

class PricingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private final List<TakeoffLine> takeoff =
      Takeoff.of(SmallBattery.lease(), SmallBattery.catalog(), SmallBattery::metres);

  @Test
  void thePriceListPricesWhatIsBought() {
    BillLine pipe = item(bill(), "poly-2", TakeoffKind.FLOW_LINE_PIPE);
    assertThat(pipe.total()).contains(new BigDecimal("2437.00"));
    assertThat(pipe.invented()).isTrue();
    assertThat(pipe.stale()).isFalse();
    assertThat(item(bill(), "crew-day", TakeoffKind.CREW).total())
        .contains(new BigDecimal("3000.00"));
  }

  @Test
  void aMissingPriceIsMissingAndCounted() {
    Bill bill = bill();
    assertThat(item(bill, "thief-hatch", TakeoffKind.OIL_TANK).state())
        .isEqualTo(BillLine.State.MISSING);
    long missing = bill.lines().stream().filter(l -> l.state() == BillLine.State.MISSING).count();
    assertThat(bill.totals().unpriced()).isEqualTo((int) missing).isPositive();
    assertThat(bill.totals().words()).endsWith("without " + missing + " unpriced lines");
  }

  @Test
  void aPriceInAnotherCurrencyIsNotUsed() {
    BillLine ball = item(bill(), "ball-2", TakeoffKind.VALVES);
    assertThat(ball.state()).isEqualTo(BillLine.State.MISSING);
    assertThat(ball.note()).isEqualTo("priced in CAD");
  }

  @Test
  void aPriceOfAYearOrMoreIsStale() {
    assertThat(item(bill(), "tank-210", TakeoffKind.OIL_TANK).stale()).isTrue();
    LocalDate before = LocalDate.of(2027, 5, 31);
    LocalDate after = LocalDate.of(2027, 6, 1);
    assertThat(item(bill(before), "poly-2", TakeoffKind.LEG_PIPE).stale()).isFalse();
    assertThat(item(bill(after), "poly-2", TakeoffKind.LEG_PIPE).stale()).isTrue();
  }

  @Test
  void aQuoteByTheFootBeatsTheListWithItsOwnWaste() {
    Quote quote = quote("q", Quote.Basis.FOOT, "1.15", 5.0, null, "flow-line-pipe");
    BillLine pipe = item(bill(quote), "poly-2", TakeoffKind.FLOW_LINE_PIPE);
    assertThat(pipe.quantity()).isEqualTo(2100);
    assertThat(pipe.total()).contains(new BigDecimal("2415.00"));
    assertThat(pipe.quotedBy()).contains("q");
    assertThat(pipe.invented()).isFalse();
  }

  @Test
  void aQuoteByTheMetreIsConverted() {
    Quote quote = quote("q", Quote.Basis.METRE, "10", null, null, "leg-pipe");
    BillLine pipe = item(bill(quote), "poly-2", TakeoffKind.LEG_PIPE);
    assertThat(pipe.quantity()).isEqualTo(18.29);
    assertThat(pipe.total()).contains(new BigDecimal("182.90"));
  }

  @Test
  void aLotPricesWhatItCoversOnce() {
    Bill bill = bill(quote("lot", Quote.Basis.LOT, "2350", null, null, "fittings", "valves"));
    assertThat(bill.lines().stream().filter(l -> l.total().isPresent() && quotedBy(l, "lot")))
        .singleElement()
        .satisfies(l -> assertThat(l.total()).contains(new BigDecimal("2350.00")));
    assertThat(
            bill.lines().stream()
                .filter(
                    l ->
                        l.kind().equals(Optional.of(TakeoffKind.FITTINGS))
                            || l.kind().equals(Optional.of(TakeoffKind.VALVES))))
        .allMatch(l -> l.state() == BillLine.State.INCLUDED);
  }

  @Test
  void aPriceForEachHasInItWhatComesWithTheThing() {
    Bill bill = bill(quote("t", Quote.Basis.EACH, "9500", null, null, "oil-tank"));
    assertThat(item(bill, "tank-210", TakeoffKind.OIL_TANK).total())
        .contains(new BigDecimal("9500.00"));
    assertThat(item(bill, "thief-hatch", TakeoffKind.OIL_TANK).state())
        .isEqualTo(BillLine.State.INCLUDED);
  }

  @Test
  void aQuoteThatNamesTheItemGoesFirst() {
    Bill bill =
        bill(
            quote("kind", Quote.Basis.EACH, "9500", null, null, "oil-tank"),
            quote("item", Quote.Basis.EACH, "9100", null, null, "tank-210"));
    assertThat(item(bill, "tank-210", TakeoffKind.OIL_TANK).quotedBy()).contains("item");
  }

  @Test
  void aSecondQuoteForTheSameIsNotAddedUp() {
    Bill bill =
        bill(
            quote("first", Quote.Basis.LOT, "9500", null, null, "oil-tank"),
            quote("second", Quote.Basis.LOT, "9100", null, null, "oil-tank"));
    assertThat(bill.notUsed())
        .singleElement()
        .satisfies(
            n -> {
              assertThat(n.quoteId()).isEqualTo("second");
              assertThat(n.why()).contains("another quote prices everything it covers");
            });
  }

  @Test
  void aQuoteWithItsOwnQuantityIsMultipliedByIt() {
    Bill bill = bill(quote("crew", Quote.Basis.DAY, "1650", null, 7.0, "crew"));
    assertThat(priced(bill, "crew").total()).contains(new BigDecimal("11550.00"));
    assertThat(item(bill, "crew-day", TakeoffKind.CREW).state()).isEqualTo(BillLine.State.INCLUDED);
  }

  @Test
  void aQuoteThatCoversNothingDrawnStandsByItself() {
    Bill bill = bill(quote("plan", Quote.Basis.LOT, "2000", null, null));
    assertThat(priced(bill, "plan").total()).contains(new BigDecimal("2000.00"));
    assertThat(bill.perThing()).containsEntry("", new BigDecimal("2000.00"));
  }

  @Test
  void aWordNobodyKnowsIsSaidBesideThePrice() {
    Bill bill = bill(quote("pipe", Quote.Basis.LOT, "2000", null, null, "flowline-pipe"));
    assertThat(priced(bill, "pipe").note())
        .isEqualTo("\"flowline-pipe\" is neither a kind of takeoff line nor in the catalogue");
    Bill each = bill(quote("pipe", Quote.Basis.FOOT, "2", null, null, "flowline-pipe"));
    assertThat(each.notUsed().get(0).why()).contains("\"flowline-pipe\" is neither");
  }

  @Test
  void aQuoteByTheFootForWhatIsCountedByThePieceIsNotUsed() {
    Bill bill = bill(quote("odd", Quote.Basis.FOOT, "3", null, null, "separator"));
    assertThat(bill.notUsed()).extracting(Bill.NotUsed::quoteId).containsExactly("odd");
    assertThat(bill.lines()).noneMatch(l -> quotedBy(l, "odd"));
  }

  @Test
  void whatIsThereCostsNothingAndHasItsWorthBesideIt() {
    List<TakeoffLine> there =
        Takeoff.of(SmallBattery.allThere(), SmallBattery.catalog(), SmallBattery::metres);
    Bill bill =
        Pricing.price(
            there,
            prices(quote("t", Quote.Basis.LOT, "9500", null, null, "oil-tank")),
            SmallBattery.prices(),
            SmallBattery.catalog(),
            TODAY);
    assertThat(bill.totals().total()).isEqualByComparingTo("0");
    assertThat(item(bill, "tank-210", TakeoffKind.OIL_TANK).worth())
        .contains(new BigDecimal("9000.00"));
    assertThat(bill.totals().have()).isGreaterThan(new BigDecimal("9000"));
    assertThat(bill.notUsed().get(0).why()).contains("everything it covers is there already");
  }

  @Test
  void totalsAddUpAndTheirWorkingGivesTheSame() {
    Prices prices =
        new Prices(
            List.of(), Optional.of(Fraction.ofPercent(15)), Optional.of(Fraction.ofPercent(8)));
    BillTotals totals = bill(prices, SmallBattery.prices(), TODAY).totals();
    assertThat(totals.contingency()).isEqualTo(Money.times(totals.subtotal(), 0.15));
    assertThat(totals.tax()).isEqualTo(Money.times(totals.goods(), 0.08));
    assertThat(totals.total())
        .isEqualTo(totals.subtotal().add(totals.contingency()).add(totals.tax()));
    assertThat(totals.working().value()).isCloseTo(totals.total().doubleValue(), within(0.02));
  }

  @Test
  void everyCentIsChargedToSomeThing() {
    Bill bill = bill(quote("lot", Quote.Basis.LOT, "2350.01", null, null, "fittings", "valves"));
    assertThat(Money.sum(bill.perThing().values())).isEqualTo(bill.totals().subtotal());
    assertThat(bill.perThing().get("T1")).isPositive();
  }

  @Test
  void theCsvHasEveryLineAndTheSums() throws Exception {
    Bill bill = bill();
    StringBuilder csv = new StringBuilder();
    BillCsv.write(bill, csv);
    List<String> rows = csv.toString().lines().toList();
    assertThat(rows).hasSize(1 + bill.lines().size() + 5);
    assertThat(rows.get(rows.size() - 1))
        .startsWith("\"Total, without " + bill.totals().unpriced() + " unpriced\"")
        .contains(bill.totals().total().toPlainString());
  }

  private static boolean quotedBy(BillLine line, String id) {
    return line.quotedBy().equals(Optional.of(id));
  }

  private static BillLine priced(Bill bill, String quote) {
    return bill.lines().stream()
        .filter(l -> quotedBy(l, quote) && l.total().isPresent())
        .findFirst()
        .orElseThrow();
  }

  private static BillLine item(Bill bill, String item, TakeoffKind kind) {
    return bill.lines().stream()
        .filter(l -> l.item().equals(Optional.of(item)) && l.kind().equals(Optional.of(kind)))
        .findFirst()
        .orElseThrow();
  }

  private static Prices prices(Quote... quotes) {
    return new Prices(Arrays.asList(quotes), Optional.empty(), Optional.empty());
  }

  private Bill bill(Quote... quotes) {
    return bill(prices(quotes), SmallBattery.prices(), TODAY);
  }

  private Bill bill(LocalDate asOf) {
    return bill(Prices.none(), SmallBattery.prices(), asOf);
  }

  private Bill bill(Prices quotes, PriceList list, LocalDate asOf) {
    return Pricing.price(takeoff, quotes, list, SmallBattery.catalog(), asOf);
  }

  private static Quote quote(
      String id, Quote.Basis basis, String price, Double waste, Double quantity, String... covers) {
    return new Quote(
        id,
        "Quote " + id,
        List.of(covers),
        basis,
        new BigDecimal(price),
        "USD",
        Optional.ofNullable(quantity),
        Optional.ofNullable(waste).map(Fraction::ofPercent),
        "Somebody",
        Optional.of(LocalDate.of(2026, 10, 1)));
  }
}
