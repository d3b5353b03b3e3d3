/**
 * The Zones step: parts of the turf that are treated alike, and which of them share a bag.
 *
 * <p>{@code ZonesStep} is the view; what it says and does is made by {@link loamline.desk.zones.ZoneBags}, which knows no
 * screen.
 */
@NullMarked
package loamline.desk.zones;

import org.jspecify.annotations.NullMarked;
