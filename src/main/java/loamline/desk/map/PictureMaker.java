package loamline.desk.map;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import loamline.desk.map.MapPicture.Ask;
import loamline.desk.map.MapPicture.Content;
import loamline.files.ImagePixels;
import loamline.geometry.Point;
import loamline.scene.Ink;
import loamline.scene.Role;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.YardScene;
import loamline.sheets.Fonts;
import loamline.sheets.ImagePainter;
import loamline.yard.Backdrop;
import org.jspecify.annotations.Nullable;

/** Draws pictures of the map: paper, the image, the yard. Used by one thread, never the screen's. */
final class PictureMaker {
    private static final double DPI = 96;

    /** Opacity of washes over an image that is fully seen: turf stays told from paving, and both from the image. */
    private static final double WASH_OVER_IMAGE = 0.3;

    private final Fonts fonts = new Fonts();
    private @Nullable Ground last;

    /** Paper and image without the yard, kept while only the yard changes. */
    private record Ground(Ask asked, BufferedImage drawn) {
        boolean serves(Ask other) {
            Content was = asked.what();
            Content is = other.what();
            return asked.viewport().equals(other.viewport())
                    && asked.pixelScale() == other.pixelScale()
                    && was.palette().equals(is.palette())
                    && was.pixels().equals(is.pixels())
                    && was.imageOpacity() == is.imageOpacity()
                    && was.results()
                            .yard()
                            .backdrop()
                            .equals(is.results().yard().backdrop());
        }
    }

    BufferedImage draw(Ask ask) {
        BufferedImage drawn = copy(ground(ask));
        Content what = ask.what();
        SceneOptions options = SceneOptions.usual(ask.viewport().view(), fonts)
                .with(what.palette())
                .with(what.units())
                .with(what.layers())
                .withWash(1 - (1 - WASH_OVER_IMAGE) * what.imageOpacity());
        Scene yard = YardScene.of(
                what.results().yard(), what.results().zones(), what.found().with(what.plan(), what.units()), options);
        new ImagePainter(fonts, DPI * ask.pixelScale(), paper(what)).paint(yard, drawn);
        return drawn;
    }

    private BufferedImage ground(Ask ask) {
        Ground kept = last;
        if (kept == null || !kept.serves(ask)) {
            kept = new Ground(ask, drawnGround(ask));
            last = kept;
        }
        return kept.drawn;
    }

    private static BufferedImage drawnGround(Ask ask) {
        Viewport viewport = ask.viewport();
        int width = (int) Math.ceil(viewport.widthPx() * ask.pixelScale());
        int height = (int) Math.ceil(viewport.heightPx() * ask.pixelScale());
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = drawn.createGraphics();
        Ink paper = paper(ask.what());
        graphics.setColor(new Color(paper.rgb()));
        graphics.fillRect(0, 0, width, height);
        double opacity = ask.what().imageOpacity();
        if (opacity > 0) {
            graphics.setClip(0, 0, width, height);
            graphics.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) opacity));
            ImagePixels pixels = ask.what().pixels().orElseThrow();
            Backdrop backdrop = ask.what().results().yard().backdrop().orElseThrow();
            pixels.draw(graphics, toDevice(backdrop, pixels, viewport, ask.pixelScale()));
        }
        graphics.dispose();
        return drawn;
    }

    /** From the pixels of a file to those of the screen; a file of another size than the yard knows is stretched. */
    static AffineTransform toDevice(Backdrop backdrop, ImagePixels pixels, Viewport viewport, double pixelScale) {
        Backdrop.Placement p = backdrop.placement();
        double perM = pixelScale / viewport.metresPerPx();
        Point corner = viewport.ground(0, 0);
        AffineTransform place = new AffineTransform(
                p.a() * perM,
                -p.d() * perM,
                p.b() * perM,
                -p.e() * perM,
                (p.c() - corner.x()) * perM,
                (corner.y() - p.f()) * perM);
        place.scale((double) backdrop.widthPx() / pixels.widthPx(), (double) backdrop.heightPx() / pixels.heightPx());
        return place;
    }

    private static Ink paper(Content what) {
        return what.palette().of(Role.PAPER);
    }

    private static BufferedImage copy(BufferedImage from) {
        BufferedImage copy = new BufferedImage(from.getWidth(), from.getHeight(), from.getType());
        from.copyData(copy.getRaster());
        return copy;
    }
}
