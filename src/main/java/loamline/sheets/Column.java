package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.scene.PaperRect;

/** Blocks one below the other, broken into pages. */
final class Column {
    private final List<Section> sections = new ArrayList<>();
    private Optional<Filler> filler = Optional.empty();

    /**
     * Rows under a head. The head stays with the first rows and comes back on every page on which rows go on; what is no
     * higher than {@link #KEPT_WHOLE_MM} is not broken.
     *
     * @param gapMm room above, unless a page begins
     */
    record Section(double gapMm, Optional<Block> head, List<Block> rows) {
        Section {
            rows = List.copyOf(rows);
        }
    }

    Column add(double gapMm, Block block) {
        sections.add(new Section(gapMm, Optional.empty(), List.of(block)));
        return this;
    }

    Column add(double gapMm, Block head, List<Block> rows) {
        sections.add(new Section(gapMm, Optional.of(head), rows));
        return this;
    }

    /** Gives a last block all the room that is left on the page, if that is worth it. */
    Column fill(double gapMm, double leastMm, Block head, Block block) {
        filler = Optional.of(new Filler(gapMm, leastMm, head, block));
        return this;
    }

    private record Filler(double gapMm, double leastMm, Block head, Block block) {}

    /** The pages it takes, at least one. A block higher than a page is drawn past its end. */
    List<Page> pages(PaperRect paper, String title, String caution) {
        Breaker breaker = new Breaker(paper, title, caution);
        sections.forEach(breaker::set);
        filler.ifPresent(breaker::fill);
        breaker.turn();
        return breaker.pages;
    }

    /** Fills page after page. */
    private static final class Breaker {
        private final PaperRect paper;
        private final String title;
        private final String caution;
        private final PaperRect body;
        private final List<Page> pages = new ArrayList<>();
        private List<Page.Placed> parts = new ArrayList<>();
        private double top;

        Breaker(PaperRect paper, String title, String caution) {
            this.paper = paper;
            this.title = title;
            this.caution = caution;
            this.body = Page.body(paper);
            this.top = body.topMm();
        }

        void set(Section section) {
            double headMm = section.head().map(this::heightMm).orElse(0.0);
            double wholeMm = headMm + sumMm(section.rows());
            double firstMm = headMm
                    + sumMm(section.rows()
                            .subList(0, Math.min(FIRST_ROWS, section.rows().size())));
            top += parts.isEmpty() ? 0 : section.gapMm();
            if (!fits(wholeMm <= KEPT_WHOLE_MM ? wholeMm : firstMm)) {
                turn();
            }
            section.head().ifPresent(this::place);
            for (Block row : section.rows()) {
                if (!fits(heightMm(row))) {
                    turn();
                    section.head().ifPresent(this::place);
                }
                place(row);
            }
        }

        private double sumMm(List<Block> blocks) {
            return blocks.stream().mapToDouble(this::heightMm).sum();
        }

        private double heightMm(Block block) {
            return block.heightMm(body.widthMm());
        }

        private boolean fits(double heightMm) {
            return parts.isEmpty() || top + heightMm <= body.bottomMm() + ROUNDING_MM;
        }

        private void place(Block block) {
            double heightMm = heightMm(block);
            parts.add(new Page.Placed(block, new PaperRect(body.leftMm(), top, body.widthMm(), heightMm)));
            top += heightMm;
        }

        void fill(Filler filler) {
            double leftMm = body.bottomMm() - top - filler.gapMm() - heightMm(filler.head());
            if (leftMm >= filler.leastMm()) {
                top += filler.gapMm();
                place(filler.head());
                parts.add(new Page.Placed(filler.block(), new PaperRect(body.leftMm(), top, body.widthMm(), leftMm)));
            }
        }

        void turn() {
            pages.add(new Page(paper, title, caution, parts));
            parts = new ArrayList<>();
            top = body.topMm();
        }
    }

    /** A table so low looks torn if it is broken. */
    static final double KEPT_WHOLE_MM = 64;

    /** Fewer rows than these do not stay alone under a head. */
    static final int FIRST_ROWS = 3;

    /** Sums of heights may come out this much too high. */
    private static final double ROUNDING_MM = 1e-6;
}
