package tankyard.engine.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import tankyard.engine.report.doc.Page;

/** A page by its word. */
final class PageConverter implements ITypeConverter<Page> {
  @Override
  public Page convert(String typed) {
    return Arrays.stream(Page.values())
        .filter(page -> page.word().equals(typed))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "found \""
                        + typed
                        + "\", none of "
                        + Arrays.stream(Page.values())
                            .map(Page::word)
                            .collect(Collectors.joining(", "))));
  }
}
