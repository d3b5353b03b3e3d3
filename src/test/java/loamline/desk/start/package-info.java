/** How long the window takes to come up: programs that are measured, and the one that measures them. */
package loamline.desk.start;
