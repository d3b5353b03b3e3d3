package loamline.tracing;

import java.util.List;

/**
 * A picture made ready for tracing: all that costs time and does not depend on the click.
 *
 * <p>A mosaic may be kept as long as the picture and its limits stay; clicks and slider moves on it are cheap.
 */
public final class Mosaic {
    private final Picture picture;
    private final Features features;
    private final Patches patches;
    private final MergeTree tree;

    private Mosaic(Picture picture, Features features, Patches patches) {
        this.picture = picture;
        this.features = features;
        this.patches = patches;
        this.tree = Merging.of(patches, Borders.of(features, patches));
    }

    /**
     * Prepares a picture.
     *
     * <p>A picture of more than {@value Features#MAX_CELLS} pixels is worked on at a half, a third, … of its
     * resolution. Where an image is larger than a yard, cut a window round the click: 2 megapixels show about
     * 100 m x 75 m at 6 cm.
     */
    public static Mosaic of(Picture picture) {
        Features features = Features.of(picture);
        return new Mosaic(picture, features, Patches.of(features));
    }

    /** Pixels along a side of the squares that the picture is worked on in; 1 is full resolution. */
    public int scale() {
        return features.scale;
    }

    /**
     * The ground round one or more clicks, taken together.
     *
     * @param clicks pixels inside the ground, at least one
     * @throws IllegalArgumentException if there is no click or one lies outside the picture
     */
    public Trace trace(List<Pixel> clicks) {
        return new Trace(this, clicks);
    }

    Picture picture() {
        return picture;
    }

    Features features() {
        return features;
    }

    MergeTree tree() {
        return tree;
    }

    /** The patch of an open cell. */
    int patch(int cell) {
        return patches.labels()[cell];
    }

    Shaping shaping() {
        return new Shaping(features, patches, tree);
    }
}
