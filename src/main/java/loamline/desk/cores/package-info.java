/**
 * The Cores step: how cores are planned, how many are enough, and cores set by hand.
 *
 * <p>{@code CoresStep} is the view; everything it says is made by {@link loamline.desk.cores.PlanForm}, {@link
 * loamline.desk.cores.CoreCount}, {@link loamline.desk.cores.BagSoil} and {@link loamline.desk.cores.CoreEdits}, which
 * know no screen. {@link loamline.desk.cores.CoreTool} is the hand on the map.
 */
@NullMarked
package loamline.desk.cores;

import org.jspecify.annotations.NullMarked;
