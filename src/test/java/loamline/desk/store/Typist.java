package loamline.desk.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import loamline.desk.session.Session;
import loamline.desk.session.Work;
import loamline.place.Frame;
import loamline.yard.Yard;

/**
 * A program without a screen that opens a yard, edits and saves it as fast as it can, and is killed for it. The yard's
 * name carries the number of the edit; after each edit a line tells the number and the time.
 */
final class Typist {
    private static final int EDITS_PER_SAVE = 20;
    private static final String NAME = "edit ";

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final Session session;
    private final Desk desk;

    private Typist(Path home) {
        session = new Session(
                Yard.empty("not open yet", Frame.local()), new Work(Executors.newCachedThreadPool(), screen::add));
        desk = new Desk(session, Home.in(home), new Insisting(), Later.byTheClock(), screen::add);
    }

    /** @param args the home folder and the yard's file */
    public static void main(String[] args) throws InterruptedException {
        Typist typist = new Typist(Path.of(args[0]));
        typist.desk.start(Optional.of(Path.of(args[1])));
        while (!typist.name().startsWith(NAME)) {
            typist.screen.take().run();
        }
        typist.type(number(typist.name()));
    }

    static int number(String name) {
        return Integer.parseInt(name.substring(NAME.length()));
    }

    static String name(int number) {
        return NAME + number;
    }

    private String name() {
        return session.history().get().now().name();
    }

    /** Until killed. */
    private void type(int first) {
        for (int number = first + 1; ; number++) {
            session.edit("name", session.history().get().now().withName(name(number)));
            out.println(number + " " + System.nanoTime());
            if (number % EDITS_PER_SAVE == 0) {
                desk.store().save();
            }
            for (Runnable task = screen.poll(); task != null; task = screen.poll()) {
                task.run();
            }
        }
    }

    /** A kill between a save and the note of it makes the file look changed by another; this one saves all the same. */
    private static final class Insisting implements Asking {
        @Override
        public <A> A ask(Question<A> question) {
            return question.choices().stream()
                    .filter(choice -> choice.label().equals("Overwrite"))
                    .findFirst()
                    .orElseThrow()
                    .answer();
        }

        @Override
        public Optional<Path> fileToOpen(String title, Sort sort, Optional<Path> folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> fileToSave(String title, List<Sort> sorts, Path suggested) {
            return Optional.empty();
        }
    }
}
