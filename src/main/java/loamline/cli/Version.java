package loamline.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar it was built into. */
final class Version implements IVersionProvider {
    /** "0.1.0", or "dev" when not run from a jar. */
    static String number() {
        return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("dev");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Loamline " + number()};
    }
}
