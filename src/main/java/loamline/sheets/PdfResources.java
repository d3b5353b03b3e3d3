package loamline.sheets;

import java.io.IOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import loamline.scene.Pixels;
import loamline.scene.Type.Face;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** What the pages of one PDF share: embedded fonts, cut down to the letters used, and degrees of opacity. */
final class PdfResources {
    private final PDDocument document;
    private final Fonts fonts;
    private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);
    private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();

    PdfResources(PDDocument document, Fonts fonts) {
        this.document = document;
        this.fonts = fonts;
    }

    Fonts fonts() {
        return fonts;
    }

    PDFont font(Face face) throws IOException {
        PDFont font = embedded.get(face);
        if (font == null) {
            font = PDType0Font.load(document, fonts.face(face), true);
            embedded.put(face, font);
        }
        return font;
    }

    PDImageXObject image(Pixels pixels) throws IOException {
        return LosslessFactory.createFromImage(document, Awt.image(pixels));
    }

    PDExtendedGraphicsState opacity(double opacity) {
        return opacities.computeIfAbsent(opacity, value -> {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant((float) (double) value);
            state.setStrokingAlphaConstant((float) (double) value);
            return state;
        });
    }
}
