package loamline.sheets;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loamline.geometry.Point;
import loamline.scene.Path;
import loamline.scene.TextMeasure;
import loamline.scene.Type;
import loamline.scene.Type.Face;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The family that pages and pictures are set in: DejaVu Sans Condensed, from the class path. Not thread-safe. */
public final class Fonts implements TextMeasure {
    /** Stands for what the family lacks: an empty box. */
    static final int REPLACEMENT = 0x25A1;

    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
    /** Height of a flat capital of the family, in ems (1493 of 2048 units). */
    private static final double CAP_EMS = 1493 / 2048.0;
    /** How far tails reach below the baseline, in ems. */
    private static final double TAIL_EMS = 0.22;

    private final Map<Face, TrueTypeFont> faces = new EnumMap<>(Face.class);
    /** Width of each character met so far as it is set, in units of its face; 0 for what is left out. */
    private final Map<Face, Map<Integer, Integer>> advances = new EnumMap<>(Face.class);

    private static TrueTypeFont load(Face face) {
        String file = switch (face) {
            case REGULAR -> "DejaVuSansCondensed.ttf";
            case BOLD -> "DejaVuSansCondensed-Bold.ttf";
            case OBLIQUE -> "DejaVuSansCondensed-Oblique.ttf";
        };
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IOException("no " + FOLDER + file + " on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            font.setEnableGsub(false); // a joined ff would be copied from the page as a character of its own
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws UncheckedIOException if the class path lacks the font */
    TrueTypeFont face(Face face) {
        return faces.computeIfAbsent(face, Fonts::load);
    }

    @Override
    public double widthMm(String words, Type type) {
        Face face = type.face();
        Map<Integer, Integer> known = advances.computeIfAbsent(face, f -> new HashMap<>());
        long units = 0;
        int c;
        for (int i = 0; i < words.length(); i += Character.charCount(c)) {
            c = words.codePointAt(i);
            units += known.computeIfAbsent(c, code -> advance(code, face));
        }
        try {
            return (double) units / face(face).getUnitsPerEm() * type.sizeMm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int advance(int code, Face face) {
        try {
            TrueTypeFont font = face(face);
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            int units = 0;
            for (int c : printable(Character.toString(code), face).codePoints().toArray()) {
                units += font.getAdvanceWidth(glyphs.getGlyphId(c));
            }
            return units;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public double capHeightMm(Type type) {
        return CAP_EMS * type.sizeMm();
    }

    @Override
    public double depthMm(Type type) {
        return TAIL_EMS * type.sizeMm();
    }

    /** The words as the family can set them: no controls, no joiners, a box for every character it lacks. */
    String printable(String words, Face face) {
        try {
            CmapLookup glyphs = face(face).getUnicodeCmapLookup();
            StringBuilder printable = new StringBuilder(words.length());
            words.codePoints()
                    .map(c -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c)
                    .filter(c -> !isInvisible(c))
                    .map(c -> glyphs.getGlyphId(c) == 0 ? REPLACEMENT : c)
                    .forEach(printable::appendCodePoint);
            return printable.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isInvisible(int c) {
        int sort = Character.getType(c);
        boolean variation = c >= 0xFE00 && c <= 0xFE0F;
        return Character.isISOControl(c) || sort == Character.FORMAT || variation;
    }

    /** The outlines of the letters, millimetres on paper, the baseline beginning at a point. */
    Path letters(String words, Type type, Point at) {
        try {
            TrueTypeFont font = face(type.face());
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double scale = type.sizeMm() / font.getUnitsPerEm();
            List<Path> letters = new ArrayList<>();
            double x = at.x();
            for (int c : printable(words, type.face()).codePoints().toArray()) {
                int glyph = glyphs.getGlyphId(c);
                GlyphData outline = font.getGlyph().getGlyph(glyph);
                if (outline != null) {
                    AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x, at.y());
                    letters.add(Awt.path(outline.getPath().getPathIterator(place)));
                }
                x += font.getAdvanceWidth(glyph) * scale;
            }
            return Path.joined(letters);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
