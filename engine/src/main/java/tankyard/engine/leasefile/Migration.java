package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * One step from a version of the lease file to the next. It works on the JSON, since the classes of
 * old versions are gone. Each step is a class of its own, named after what it changes, with a test
 * on a file of the old version.
 */
interface Migration {
  /** The version it reads; it leaves the one after. */
  int from();

  /** What can't be taken over, by its place in the old file; the tree is then left as it was. */
  Optional<Complaint> apply(ObjectNode tree);
}
