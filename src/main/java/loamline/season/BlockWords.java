package loamline.season;

import java.util.List;
import java.util.stream.Collectors;
import loamline.season.blend.Blend;
import loamline.season.blend.Blocking;
import loamline.season.blend.Plot;
import loamline.season.blend.Quantity;

/** Rules in the way, in sentences. */
record BlockWords(Blend blend, SeasonOptions options) {
    List<String> words(List<Blocking.Block> blocks) {
        return blocks.stream().map(this::words).distinct().toList();
    }

    private String words(Blocking.Block block) {
        Plot plot = blend.plots().get(block.plot());
        String what = block.quantities().isEmpty()
                ? "what it needs"
                : block.quantities().stream().map(BlockWords::name).collect(Collectors.joining(" and "));
        return plot.name() + ": "
                + switch (block.rule()) {
                    case NOT_SOLD -> "nothing on the price list brings " + what + ". Add a product that does.";
                    case NO_DATE -> "the calendar and the law leave no date.";
                    case DOSE ->
                        (block.quantities().size() == 1
                                        ? "the cap on " + what + " in one dose is"
                                        : "the caps on " + what + " in one dose are together")
                                + " in the way on "
                                + plot.slots().size()
                                + (plot.slots().size() == 1 ? " date" : " dates")
                                + ". Ask for less, allow more dates" + slower(block) + ".";
                    case SEASON ->
                        "every product that would do brings more " + what
                                + " than the season allows. Add a product without it.";
                    case MATERIALS ->
                        "the products that would do may not be used on its dates: the law, heat or the spacing of lime"
                                + " is in the way. Add a product that is free of phosphate, or slow, or start earlier.";
                    case TOGETHER ->
                        "no dates and doses within all caps bring enough of " + what
                                + ". Several rules are in the way at once.";
                };
    }

    private static String slower(Blocking.Block block) {
        return block.quantities().contains(Quantity.QUICK_N) ? ", or add a product with slow-release nitrogen" : "";
    }

    static String name(Quantity quantity) {
        return switch (quantity) {
            case N -> "nitrogen";
            case QUICK_N -> "quick-release nitrogen";
            case P2O5 -> "phosphate";
            case K2O -> "potash";
            case SALT -> "salt";
            case LIME -> "lime";
            case LIME_WEIGHT -> "lime by weight";
            case SULFUR -> "sulfur";
            case GYPSUM -> "gypsum";
        };
    }
}
