package tankyard.engine.leasefile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Breaks the text of a good lease file in many named ways. */
final class BrokenTexts {
  private static final String QUANTITY = "{\"value\": 24, \"unit\": \"in\"}";

  private final String good;
  private final Random random;
  private final List<BrokenFile> files = new ArrayList<>();

  private BrokenTexts(String good, long seed) {
    this.good = good;
    this.random = new Random(seed);
  }

  static List<BrokenFile> of(String good, long seed) {
    BrokenTexts broken = new BrokenTexts(good, seed);
    broken.cuts();
    broken.slips();
    broken.strangers();
    broken.encodings();
    return broken.files;
  }

  private void cuts() {
    for (int i = 0; i < 12; i++) {
      // Not in the last two characters: without its line end a lease is still whole.
      int at = 1 + random.nextInt(good.length() - 3);
      files.add(BrokenFile.text("cut off", good.substring(0, at), ""));
    }
  }

  private void slips() {
    swap("no comma", "\"version\": 2,", "\"version\": 2", "'\"'");
    swap("comma too many", QUANTITY, "{\"value\": 24, \"unit\": \"in\",}", "'}'");
    swap("comma too many", "\"version\": 2,", "\"version\": 2,,", "','");
    swap("no colon", "\"version\": 2,", "\"version\" 2,", "'2'");
    swap("single quotes", "\"name\":", "'name':", "'");
    swap("name without quotes", "\"name\":", "name:", "'n'");
    swap("remark", "\"version\": 2,", "\"version\": 2, // first", "'/'");
    swap("NaN", QUANTITY, "{\"value\": NaN, \"unit\": \"in\"}", "NaN");
    swap("infinity", QUANTITY, "{\"value\": -Infinity, \"unit\": \"in\"}", "");
    swap("infinity", QUANTITY, "{\"value\": Infinity, \"unit\": \"in\"}", "Infinity");
    swap("odd number", QUANTITY, "{\"value\": 024, \"unit\": \"in\"}", "");
    swap("odd number", QUANTITY, "{\"value\": .5, \"unit\": \"in\"}", "");
    swap("odd number", QUANTITY, "{\"value\": 1,5, \"unit\": \"in\"}", "");
    swap("endless number", QUANTITY, "{\"value\": 1" + "0".repeat(500) + "}", "");
    swap("line end in text", "\"format\": \"", "\"format\": \"\n", "a line end");
    swap("odd escape", "\"format\": \"", "\"format\": \"\\q", "");
    swap("no such word", "\"version\": 2,", "\"version\": one,", "one");
    twice("version", "\"version\": 2,", "\"version\": 2, \"version\": 2,", "/version");
    twice("unit", QUANTITY, "{\"value\": 24, \"unit\": \"in\", \"unit\": \"ft\"}", null);
    files.add(BrokenFile.text("junk at the end", good + "}", "}"));
    files.add(BrokenFile.text("junk at the end", good + good, "after the end"));
    files.add(BrokenFile.text("junk at the end", good + "thanks", "thanks"));
    String deep = "{\"a\": ".repeat(5000) + "1" + "}".repeat(5000);
    files.add(BrokenFile.text("nested too deep", deep, "too deep"));
    files.add(BrokenFile.text("nested too deep", "[".repeat(100_000), "too deep"));
  }

  private void twice(String field, String from, String to, String place) {
    String found = "the field \"" + field + "\" twice";
    files.add(
        new BrokenFile(
            "field twice",
            replaced(from, to).getBytes(StandardCharsets.UTF_8),
            Optional.ofNullable(place),
            found));
  }

  private void strangers() {
    for (String text :
        List.of("well,oil,water\nW1,3,27\n", "<lease/>", "Dear Sam,\n", "lease: x\n")) {
      files.add(BrokenFile.text("not JSON", text, ""));
    }
    files.add(BrokenFile.text("not an object", "[1, 2]", "[1, 2]"));
    files.add(BrokenFile.text("not an object", "42", "42"));
    files.add(BrokenFile.text("not an object", "\"lease\"", "\"lease\""));
    files.add(BrokenFile.text("not an object", "null", "null"));
    files.add(BrokenFile.text("empty", "", "an empty file"));
    files.add(BrokenFile.text("empty", " \n\t\n", "nothing but blanks"));
    files.add(BrokenFile.text("too large", " ".repeat(Utf8.MOST_BYTES + 1), "a file of"));
    byte[] noise = new byte[4000];
    random.nextBytes(noise);
    files.add(new BrokenFile("not text", noise, Optional.empty(), ""));
    byte[] zeros = new byte[good.length()];
    files.add(new BrokenFile("not text", zeros, Optional.empty(), ""));
  }

  private void encodings() {
    files.add(encoded(StandardCharsets.UTF_16LE));
    files.add(encoded(StandardCharsets.UTF_16BE));
    files.add(encoded(StandardCharsets.UTF_16));
    byte[] marked =
        concat(new byte[] {(byte) 0xFF, (byte) 0xFE}, good.getBytes(StandardCharsets.UTF_16LE));
    files.add(new BrokenFile("UTF-16", marked, Optional.empty(), "UTF-16"));
    byte[] latin = good.replace("Osage", "Osagé").getBytes(StandardCharsets.ISO_8859_1);
    files.add(new BrokenFile("another encoding", latin, Optional.empty(), "no UTF-8"));
    byte[] cut = concat(good.getBytes(StandardCharsets.UTF_8), new byte[] {(byte) 0xC3});
    files.add(new BrokenFile("another encoding", cut, Optional.empty(), "no UTF-8"));
  }

  private BrokenFile encoded(Charset charset) {
    return new BrokenFile("UTF-16", good.getBytes(charset), Optional.empty(), "UTF-16");
  }

  private static byte[] concat(byte[] one, byte[] other) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(one);
    out.writeBytes(other);
    return out.toByteArray();
  }

  private void swap(String kind, String from, String to, String found) {
    files.add(BrokenFile.text(kind, replaced(from, to), found));
  }

  private String replaced(String from, String to) {
    int at = good.indexOf(from);
    if (at < 0) {
      throw new IllegalStateException("The good file has no " + from);
    }
    return good.substring(0, at) + to + good.substring(at + from.length());
  }
}
