package loamline.cli;

import java.util.concurrent.Callable;
import loamline.yard.Yard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code loamline check}. */
@Command(
        name = "check",
        description = "Read a yard and list everything that is doubtful in it.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private YardInput input;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        input.say(yard.features().size() + " features read.");
        return input.exitCode();
    }
}
