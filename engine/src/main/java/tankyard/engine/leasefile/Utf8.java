package tankyard.engine.leasefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The bytes of a file as text; a lease file is UTF-8 and nothing else. */
final class Utf8 {
  /** A lease of a thousand wells is under 2 MB. */
  static final int MOST_BYTES = 20_000_000;

  private static final String ACCEPTED = "a lease file: JSON text in UTF-8";

  private Utf8() {}

  static String decode(String file, byte[] bytes) throws LeaseFileException {
    if (bytes.length > MOST_BYTES) {
      throw problem(
          file,
          "a file of " + bytes.length + " bytes",
          "a lease file of no more than " + MOST_BYTES + " bytes");
    }
    if (bytes.length == 0) {
      throw problem(file, "an empty file", ACCEPTED);
    }
    if (looksLikeUtf16(bytes)) {
      throw problem(file, "text in UTF-16", ACCEPTED + "; save it again as UTF-8");
    }
    // Some editors put the three bytes of a byte-order mark first; it means nothing in UTF-8.
    boolean marked = startsWith(bytes, 0xEF, 0xBB, 0xBF);
    byte[] text = marked ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    return strictly(file, text);
  }

  private static String strictly(String file, byte[] text) throws LeaseFileException {
    ByteBuffer in = ByteBuffer.wrap(text);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(in).toString();
    } catch (CharacterCodingException e) {
      throw problem(file, "bytes that are no UTF-8 text, from byte " + in.position(), ACCEPTED);
    }
  }

  private static boolean looksLikeUtf16(byte[] bytes) {
    boolean marked = startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF);
    // Without a mark: an opening brace or blank beside a zero byte.
    return marked || (bytes.length > 1 && (bytes[0] == 0) != (bytes[1] == 0));
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }

  private static LeaseFileException problem(String file, String found, String accepted) {
    return new LeaseFileException(new Problem(file, "", Optional.empty(), found, accepted));
  }
}
