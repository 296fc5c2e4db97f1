package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;

class SaveTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameAFile() {
    file = folder.resolve("yard" + LeaseFiles.EXTENSION);
  }

  @Test
  void aSavedLeaseIsReadBackAndNothingElseIsLeft() throws Exception {
    SavedFile saved = LeaseFiles.save(SampleLease.small(), file);

    assertThat(saved).isEqualTo(new SavedFile(file, Optional.empty()));
    assertThat(LeaseFiles.read(file)).isEqualTo(SampleLease.small());
    assertThat(names()).containsExactly("yard.lease.json");
  }

  @Test
  void aReadableLeaseIsReplacedWithoutACopy() throws Exception {
    LeaseFiles.save(SampleLease.small(), file);

    SavedFile saved = LeaseFiles.save(SampleLease.small().withName("Other"), file);

    assertThat(saved.keptAside()).isEmpty();
    assertThat(LeaseFiles.read(file).name()).isEqualTo("Other");
    assertThat(names()).containsExactly("yard.lease.json");
  }

  @Test
  void aFileThatCannotBeReadIsKeptAside() throws Exception {
    Files.writeString(file, "{ half a lease");
    LeaseFiles.save(SampleLease.small(), file);
    Files.writeString(file, "a letter");

    SavedFile saved = LeaseFiles.save(SampleLease.small(), file);

    assertThat(names()).containsExactly("yard.lease.json", "yard.lease.json~", "yard.lease.json~2");
    assertThat(folder.resolve("yard.lease.json~")).hasContent("{ half a lease");
    assertThat(saved.keptAside())
        .hasValueSatisfying(aside -> assertThat(aside.file()).hasContent("a letter"))
        .map(SavedFile.Kept::why)
        .hasValue(SavedFile.Why.UNREADABLE);
    assertThat(LeaseFiles.read(file)).isEqualTo(SampleLease.small());
  }

  @Test
  void aLeaseThatSomebodyElseWroteMeanwhileIsKeptAside() throws Exception {
    Lease seen = SampleLease.small();
    LeaseFiles.save(seen, file);
    LeaseFiles.save(seen.withName("Theirs"), file);

    SavedFile saved = LeaseFiles.save(seen.withName("Ours"), file, Optional.of(seen));

    assertThat(saved.keptAside())
        .hasValue(new SavedFile.Kept(folder.resolve("yard.lease.json~"), SavedFile.Why.CHANGED));
    assertThat(LeaseFiles.read(folder.resolve("yard.lease.json~")).name()).isEqualTo("Theirs");
    assertThat(LeaseFiles.read(file).name()).isEqualTo("Ours");
  }

  @Test
  void theLeaseLastSeenIsReplacedWithoutACopy() throws Exception {
    Lease seen = SampleLease.small();
    LeaseFiles.save(seen, file);

    assertThat(LeaseFiles.save(seen.withName("Ours"), file, Optional.of(seen)).keptAside())
        .isEmpty();
    assertThat(names()).containsExactly("yard.lease.json");
  }

  @Test
  void aLeaseOfANewerVersionIsKeptAsideToo() throws Exception {
    String newer =
        LeaseFiles.toJson(SampleLease.small()).replace("\"version\": 2", "\"version\": 3");
    Files.writeString(file, newer);

    LeaseFiles.save(SampleLease.small(), file);

    assertThat(folder.resolve("yard.lease.json~")).hasContent(newer);
  }

  @Test
  void aLeaseThatCouldNotBeReadAgainIsNotSaved() throws Exception {
    LeaseFiles.save(SampleLease.small(), file);
    Line line = SampleLease.small().lines().get(0);
    Lease broken = SampleLease.small().with(line.withEnds("W1", "nowhere"));

    assertThatThrownBy(() -> LeaseFiles.save(broken, file))
        .isInstanceOf(LeaseFileException.class)
        .hasMessageContaining("yard.lease.json /lines/0/to: found ")
        .hasMessageContaining("nowhere");
    assertThat(LeaseFiles.read(file)).isEqualTo(SampleLease.small());
    assertThat(names()).containsExactly("yard.lease.json");
  }

  @Test
  void aFolderInTheWayIsSaidAndStays() throws Exception {
    Files.createDirectory(file);

    assertThatThrownBy(() -> LeaseFiles.save(SampleLease.small(), file))
        .isInstanceOf(LeaseFileException.class)
        .hasMessageContaining("found a folder");
    assertThat(file).isEmptyDirectory();
    assertThat(names()).containsExactly("yard.lease.json");
  }

  @Test
  void aFolderThatIsNotThereIsSaid() {
    assertThatThrownBy(
            () -> LeaseFiles.save(SampleLease.small(), folder.resolve("no/x.lease.json")))
        .isInstanceOf(LeaseFileException.class)
        .hasMessageContaining("x.lease.json: found no such folder; accepted: ");
  }

  @Test
  void aSaveThroughALinkKeepsTheLink() throws Exception {
    Path real = Files.createDirectory(folder.resolve("real")).resolve("there.lease.json");
    LeaseFiles.save(SampleLease.small(), real);
    Files.createSymbolicLink(file, real);

    LeaseFiles.save(SampleLease.small().withName("Linked"), file);

    assertThat(file).isSymbolicLink();
    assertThat(LeaseFiles.read(real).name()).isEqualTo("Linked");
  }

  @Test
  void theOldFilesPermissionsGoOverToTheNew() throws Exception {
    assumeThat(file.getFileSystem().supportedFileAttributeViews()).contains("posix");
    LeaseFiles.save(SampleLease.small(), file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));

    LeaseFiles.save(SampleLease.small().withName("Shared"), file);

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  @Test
  void whatKilledSavesLeftIsSweptAwayLater() throws Exception {
    Path fresh = Files.createFile(folder.resolve(".yard.lease.json.1a.saving"));
    Path old = Files.createFile(folder.resolve(".yard.lease.json.2b.saving"));
    Path others = Files.createFile(folder.resolve(".other.lease.json.3c.saving"));
    FileTime yesterday = FileTime.from(Instant.now().minus(Duration.ofDays(1)));
    Files.setLastModifiedTime(old, yesterday);
    Files.setLastModifiedTime(others, yesterday);

    LeaseFiles.save(SampleLease.small(), file);

    assertThat(old).doesNotExist();
    assertThat(fresh).exists();
    assertThat(others).exists();
  }

  @Test
  void readingWhatIsNotThereIsSaidInOneLine() {
    assertThatThrownBy(() -> LeaseFiles.read(file))
        .isInstanceOf(LeaseFileException.class)
        .hasMessage(file + ": found no such file; accepted: a lease file that can be read");
    assertThatThrownBy(() -> LeaseFiles.read(folder)).hasMessageContaining("found a folder");
  }

  private List<String> names() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}
