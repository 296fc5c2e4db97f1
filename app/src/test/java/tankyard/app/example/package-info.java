/** A small invented lease that tests of the studio draw on. */
package tankyard.app.example;
