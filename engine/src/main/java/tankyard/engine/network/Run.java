package tankyard.engine.network;

/** A link between two joints of a network, by their ids. */
public record Run(String id, String from, String to, Link link) {}
