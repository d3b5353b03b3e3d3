package loamline.desk.print;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import loamline.sheets.SheetOptions;

/** Saves what can be printed or taken along, where the person says. */
public final class Saving {
    private final PrintModel model;
    private final BiFunction<String, String, Optional<Path>> askWhere;

    /** @param askWhere given a title and a file name, the file to write, if the person does not turn back */
    public Saving(PrintModel model, BiFunction<String, String, Optional<Path>> askWhere) {
        this.model = model;
        this.askWhere = askWhere;
    }

    /** Asks where, and saves the walk plan. */
    public void walkPlan() {
        save(Output.WALK_PLAN);
    }

    /**
     * Asks where, and saves what a step has made.
     *
     * @param title what it is, such as {@code Cup sheet}
     * @param name to offer, after the yard's
     * @param made the file, given how pages are to be made; not on the screen's thread
     */
    public void pages(String title, String name, Function<SheetOptions, byte[]> made) {
        askWhere.apply("Save " + title, model.fileName(name)).ifPresent(file -> model.save(title, file, made));
    }

    /** Asks where, and saves pages of another step; says so if there are none. */
    void save(StepPages pages) {
        pages.made()
                .get()
                .ifPresentOrElse(made -> pages(pages.title(), pages.fileName(), made), () -> model.say(pages.lack()));
    }

    /** Asks where, and saves; says so if there is nothing to save yet. */
    void save(Output output) {
        String refusal = model.printable().map(output::refusal).orElse("There are no cores to print yet.");
        if (refusal.isEmpty()) {
            askWhere.apply("Save " + output.title(), model.fileName(output))
                    .ifPresent(file -> model.save(output, file));
        } else {
            model.say(refusal);
        }
    }
}
