/**
 * What the window remembers from one day to the next: its size, light or dark, files opened last.
 *
 * <p>Start at {@link tankyard.app.memory.Memory}. {@link tankyard.app.memory.FileMemory} keeps it
 * in a properties file below the owner's home; tests use {@code Memory.forgetful()}. Each feature
 * owns its keys, written {@code feature.what}. Nothing of a lease is kept here.
 *
 * <p>Used on the window's thread. Uses nothing else.
 */
package tankyard.app.memory;
