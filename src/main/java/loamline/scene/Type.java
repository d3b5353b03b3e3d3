package loamline.scene;

/**
 * How words are set, in the one sans family.
 *
 * @param sizePt size of the body, points of 1/72 in, above 0
 */
public record Type(Face face, double sizePt) {
    /** Millimetres in a point. */
    public static final double MM_PER_PT = 25.4 / 72;

    /** @throws IllegalArgumentException if the size is not above 0 */
    public Type {
        if (!(sizePt > 0)) {
            throw new IllegalArgumentException("a type size must be above 0, not " + sizePt);
        }
    }

    /** The cuts of the family. */
    public enum Face {
        REGULAR,
        BOLD,
        OBLIQUE
    }

    public static Type regular(double sizePt) {
        return new Type(Face.REGULAR, sizePt);
    }

    public static Type bold(double sizePt) {
        return new Type(Face.BOLD, sizePt);
    }

    public static Type oblique(double sizePt) {
        return new Type(Face.OBLIQUE, sizePt);
    }

    /** The size in millimetres. */
    public double sizeMm() {
        return sizePt * MM_PER_PT;
    }

    /** The same cut at another size. */
    public Type sized(double changedPt) {
        return new Type(face, changedPt);
    }
}
