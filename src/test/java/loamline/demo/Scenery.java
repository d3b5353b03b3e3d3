package loamline.demo;

import java.util.List;
import java.util.Map;
import loamline.geometry.Box;
import loamline.yard.Feature;

/**
 * What an aerial picture shows besides the yard.
 *
 * @param view what the picture must cover, in the yard's plane
 * @param pixelM side of a pixel on the ground, m
 * @param beyond the neighbours' ground, painted before the yard's own
 * @param roofs of the yard's buildings and the neighbours'
 * @param cars parked in sight
 * @param materials by name of cover, where it is not the usual one of its kind
 * @param sunAzimuthDeg where the sun stood, clockwise from north
 * @param sunElevationDeg how high it stood
 * @param seed of all that is random
 */
record Scenery(
        Box view,
        double pixelM,
        List<Feature> beyond,
        List<Roof> roofs,
        List<Car> cars,
        Map<String, Material> materials,
        double sunAzimuthDeg,
        double sunElevationDeg,
        long seed) {}
