/** Takes pictures of the studio, for people to look at and for the manual. */
package tankyard.app.picture;
