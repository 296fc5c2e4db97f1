package tankyard.engine.quick;

import java.util.Optional;
import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountFormatException;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Unit;

/**
 * One input's value.
 *
 * @param text as typed, or the usual value
 * @param assumed whether nobody typed it
 * @param amount empty where words are taken
 */
public record QuickValue(QuickInput input, String text, boolean assumed, Optional<Amount> amount) {
  private static final double SMALLEST = 1e-6;
  private static final double LARGEST = 1e9;

  static Optional<QuickValue> read(QuickInput input, String typed) {
    boolean assumed = typed == null;
    if (assumed && input.usual().isEmpty()) {
      if (input.needed()) {
        throw QuickInputException.of(
            input.id(), "missing: " + input.title() + ", for example \"" + input.example() + "\".");
      }
      return Optional.empty();
    }
    String text = assumed ? input.usual().orElseThrow() : typed.strip();
    if (!input.choices().isEmpty() && !input.choices().contains(text)) {
      throw QuickInputException.of(
          input.id(), "\"" + text + "\" is none of " + String.join(", ", input.choices()) + ".");
    }
    if (text.isEmpty()) {
      throw QuickInputException.of(
          input.id(),
          "nothing typed: " + input.title() + ", for example \"" + input.example() + "\".");
    }
    return Optional.of(
        new QuickValue(input, text, assumed, input.bare().map(u -> parse(input, text, u))));
  }

  private static Amount parse(QuickInput input, String text, Unit bare) {
    Amount amount;
    try {
      amount = AmountText.parse(text, bare.dimension(), bare);
    } catch (AmountFormatException e) {
      throw new QuickInputException("--" + input.id() + ": " + e.getMessage(), e);
    }
    double size = Math.abs(amount.value());
    if (size != 0 && (size < SMALLEST || size > LARGEST)) {
      throw QuickInputException.of(
          input.id(), text + " is hardly meant: numbers from 0.000001 to 1000000000 are taken.");
    }
    // A warm day is no negative temperature and 10 °API no small gravity: only ratios have a zero.
    boolean tooSmall =
        switch (input.sign()) {
          case ABOVE_ZERO -> !(amount.si() > 0);
          case ZERO_OR_MORE -> amount.si() < 0;
          case ANY -> false;
        };
    if (tooSmall) {
      throw QuickInputException.of(
          input.id(),
          text
              + (input.sign() == QuickInput.Sign.ABOVE_ZERO
                  ? " must be more than zero."
                  : " can't be less than zero."));
    }
    return amount;
  }
}
