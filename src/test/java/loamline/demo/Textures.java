package loamline.demo;

import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;

/** Ground that is not grass. */
final class Textures {
    private static final double BOARD_M = 0.18;
    private static final double SLAB_M = 0.4;
    private static final double WHEEL_TRACK_M = 1.15;

    private final Noise noise;

    Textures(Noise noise) {
        this.noise = noise;
    }

    /** The texture of a material on some ground; joints, boards and slabs run along its longest side. */
    Texture of(Material material, Outline outline) {
        Point corner = outline.vertices().findFirst().orElseThrow();
        Axes along = new Axes(corner, Rings.headingRad(outline));
        return switch (material) {
            case CONCRETE -> concrete(along, jointM(outline));
            case PAVERS -> pavers(along);
            case ASPHALT -> this::asphalt;
            case GRAVEL -> gravel(outline);
            case MULCH -> this::mulch;
            case WATER -> water(outline);
            case DECK -> deck(along);
            case SHINGLE, METAL -> throw new IllegalArgumentException(material + " is for roofs");
        };
    }

    private static double jointM(Outline outline) {
        Box box = Box.around(outline.vertices()).orElseThrow();
        double narrow = Math.min(box.widthM(), box.heightM());
        return narrow / Math.ceil(narrow / 3.2);
    }

    private Texture concrete(Axes along, double jointM) {
        return (x, y, rgb) -> {
            double u = along.u(x, y) / jointM;
            double v = along.v(x, y) / jointM;
            double stain = 0.07 * noise.octaves(x / 2.2, y / 2.2, 3);
            double grain = 0.035 * noise.at(x * 7, y * 7) + 0.03 * noise.at(x * 19, y * 19);
            double slab = 0.05 * noise.of((long) Math.floor(u + 1e-6), (long) Math.floor(v + 1e-6));
            Texture.set(rgb, 0xB9B4A8, 1 + stain + grain + slab - 0.16 * Math.max(joint(u, jointM), joint(v, jointM)));
        };
    }

    /** 1 in a joint, 0 away from it. */
    private static double joint(double slabs, double slabM) {
        double offM = Math.abs(slabs - Math.rint(slabs)) * slabM;
        return Math.max(0, 1 - offM / 0.07);
    }

    private Texture pavers(Axes along) {
        return (x, y, rgb) -> {
            double v = along.v(x, y) / SLAB_M;
            double row = Math.floor(v);
            double u = along.u(x, y) / (1.5 * SLAB_M) + 0.5 * (row % 2);
            double own = noise.of((long) Math.floor(u), (long) row);
            Texture.set(rgb, 0xA89A88, 0.88 + 0.2 * own + 0.06 * noise.octaves(x / 1.3, y / 1.3, 4));
            Texture.towards(rgb, 0x9C7B66, 0.6 * noise.of((long) row, (long) Math.floor(u)));
            Texture.scale(rgb, 1 - 0.22 * Math.max(joint(u, 1.5 * SLAB_M), joint(v, SLAB_M)));
        };
    }

    private void asphalt(double x, double y, float[] rgb) {
        double patch = 0.1 * noise.octaves(x / 6, y / 2.5, 3);
        double seal = Math.abs(noise.octaves(x / 7 + 40, y / 1.7, 3) - 0.1);
        boolean crack = seal < 0.006 && noise.at(x / 9, y / 9 + 60) > 0.02;
        double grain = 0.1 * noise.at(x * 12, y * 12) + 0.08 * noise.at(x * 29, y * 29);
        Texture.set(rgb, 0x7C7B79, 1 + patch + grain - (crack ? 0.2 : 0));
    }

    private Texture gravel(Outline outline) {
        return (x, y, rgb) -> {
            double edgeM = Rings.distanceM(outline, x, y);
            double stones = 0.16 * noise.at(x * 9, y * 9) + 0.16 * noise.at(x * 23, y * 23);
            double track = StrictMath.exp(-square((edgeM - WHEEL_TRACK_M) / 0.3));
            double shift = noise.octaves(x / 1.6, y / 1.6, 4);
            Texture.set(rgb, 0xB3A78F, 0.94 + stones + 0.12 * shift + 0.09 * track);
            double weeds = 0.55 * StrictMath.exp(-edgeM / 0.22) + 0.35 * shift - 0.25 * track;
            Texture.towards(rgb, 0x757A4C, Math.max(0, Math.min(0.6, weeds)));
        };
    }

    private void mulch(double x, double y, float[] rgb) {
        double chips = 0.3 * noise.at(x * 8, y * 8) + 0.32 * noise.at(x * 20, y * 20);
        Texture.set(rgb, 0x5E4636, 0.95 + chips + 0.14 * noise.octaves(x, y, 3));
    }

    private Texture water(Outline outline) {
        return (x, y, rgb) -> {
            double edgeM = Rings.distanceM(outline, x, y);
            double ripple = 0.1 * noise.at(x * 1.1 + y * 0.4, y * 5) + 0.05 * noise.at(x * 5, y * 13);
            Texture.set(rgb, 0x35493F, 1 + ripple + 0.18 * noise.octaves(x / 4, y / 4, 2));
            double shallow = StrictMath.exp(-edgeM / 0.8) + 0.25 * noise.octaves(x / 1.4, y / 1.4, 3);
            Texture.towards(rgb, 0x77714E, Math.max(0, Math.min(0.85, shallow)));
            double algae = noise.octaves(x / 3.3 + 9, y / 2.1, 4) - 0.28;
            Texture.towards(rgb, 0x6A7F45, Math.max(0, Math.min(0.5, 3 * algae)));
        };
    }

    private Texture deck(Axes along) {
        return (x, y, rgb) -> {
            double boards = along.v(x, y) / BOARD_M;
            long board = (long) Math.floor(boards);
            double u = along.u(x, y);
            long piece = (long) Math.floor(u / 3.6 + noise.of(board, 7));
            double gap = 0.3 * Math.max(0, 1 - Math.abs(boards - Math.rint(boards)) * BOARD_M / 0.05);
            double wood = 0.14 * noise.of(board, piece) + 0.08 * noise.at(u * 2.5, board * 3.7);
            Texture.set(rgb, 0x97795C, 0.9 + wood - gap + 0.05 * noise.octaves(x, y, 3));
        };
    }

    private static double square(double a) {
        return a * a;
    }
}
