package tankyard.app.shell;

import javafx.scene.layout.Region;

/**
 * Something that has a tab in the strip below the map.
 *
 * @param id of the tab, after "tab-"
 * @param title on the tab
 * @param reason what one looks there for
 */
public record Pane(String id, String title, String reason, Region content) {}
