package loamline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The house rules of docs/architecture.md, without exceptions. */
@AnalyzeClasses(packages = "loamline", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Rooms by floor, lowest first. */
    private static final List<List<String>> FLOORS = List.of(
            List.of("geometry", "place", "units", "account", "cancel"),
            List.of("yard", "raster", "reference"),
            List.of("sampling", "water", "sun", "findings", "soil", "season", "tracing"),
            List.of("scene"),
            List.of("sheets", "files"),
            List.of("desk", "cli"));

    /** Arrows within a floor that the job itself draws. */
    private static final Map<String, List<String>> NEIGHBOURS = Map.of(
            "place", List.of("geometry"), // a place in the plane is a point
            "season", List.of("soil"), // what to buy follows from what the soil lacks
            // a log is about planned cores, each set beside modelled water and sun and the laboratory's report
            "findings", List.of("sampling", "water", "sun", "soil"),
            "cli", List.of()); // commands drive the rooms, never the window

    private static final Pattern ROOM = Pattern.compile("^loamline\\.(\\w+)");

    private static int floorOf(String room) {
        for (int i = 0; i < FLOORS.size(); i++) {
            if (FLOORS.get(i).contains(room)) {
                return i;
            }
        }
        return -1;
    }

    private static String roomOf(JavaClass type) {
        Matcher room = ROOM.matcher(type.getPackageName());
        return room.find() ? room.group(1) : "";
    }

    @ArchTest
    static final ArchRule everyClassHasARoom = classes()
            .that()
            .resideOutsideOfPackage("loamline")
            .should(new ArchCondition<>("live in a known room") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    if (floorOf(roomOf(type)) < 0) {
                        events.add(SimpleConditionEvent.violated(type, type.getName() + " lives in no known room"));
                    }
                }
            });

    @ArchTest
    static final ArchRule arrowsGoDown = classes().should(new ArchCondition<>("look down only") {
        @Override
        public void check(JavaClass type, ConditionEvents events) {
            String room = roomOf(type);
            type.getDirectDependenciesFromSelf().stream()
                    .filter(d -> !room.isEmpty() && !roomOf(d.getTargetClass()).isEmpty())
                    .filter(d -> !mayLook(room, roomOf(d.getTargetClass())))
                    .forEach(d -> events.add(SimpleConditionEvent.violated(type, d.getDescription())));
        }
    });

    private static boolean mayLook(String from, String to) {
        return from.equals(to)
                || floorOf(to) < floorOf(from)
                || NEIGHBOURS.getOrDefault(from, List.of()).contains(to);
    }

    @ArchTest
    static final ArchRule noCycles = slices().matching("loamline.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule jtsStaysInGeometry = only("geometry", "org.locationtech..", "no other room sees JTS");

    @ArchTest
    static final ArchRule sisStaysInPlace = only("place", "org.apache.sis..", "no other room sees Apache SIS");

    @ArchTest
    static final ArchRule jacksonStaysInFiles = only("files", "com.fasterxml..", "bytes are the files' business");

    @ArchTest
    static final ArchRule csvStaysInFiles = only("files", "de.siegmar..", "bytes are the files' business");

    @ArchTest
    static final ArchRule gpxStaysInFiles = only("files", "io.jenetics..", "bytes are the files' business");

    @ArchTest
    static final ArchRule iconsStayInTheWindow = only("desk", "org.kordamp..", "no other room has a screen");

    private static ArchRule only(String room, String library, String why) {
        return noClasses()
                .that()
                .resideOutsideOfPackage("loamline." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because(why);
    }

    @ArchTest
    static final ArchRule pdfStaysInSheets = noClasses()
            .that()
            .resideOutsideOfPackage("loamline.sheets..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.pdfbox..")
            .because("pages are made in one room");

    @ArchTest
    static final ArchRule theCoreKnowsNoScreenNoFileNoClock = noClasses()
            .that()
            .resideInAnyPackage(FLOORS.subList(0, 4).stream()
                    .flatMap(List::stream)
                    .map(room -> "loamline." + room + "..")
                    .toArray(String[]::new))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "java.util.logging..", "java.nio.file..", "java.awt..")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callConstructor(java.util.Random.class)
            .orShould()
            .callConstructor(java.util.SplittableRandom.class)
            .orShould()
            .callMethod(Math.class, "random")
            .because("the same input gives the same bytes");

    @ArchTest
    static final ArchRule nobodyPrintsBelowTheCommandLine = noClasses()
            .that()
            .resideOutsideOfPackages("loamline", "loamline.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    @ArchTest
    static final ArchRule theDocumentIsValues = classes()
            .that()
            .resideInAPackage("loamline.yard..")
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should(new ArchCondition<>("be records, enums, sealed or final") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    boolean sealedType =
                            type.reflect().isSealed() || type.getSimpleName().equals("package-info");
                    if (!sealedType && !type.getModifiers().contains(JavaModifier.FINAL)) {
                        events.add(SimpleConditionEvent.violated(type, type.getName() + " can be extended"));
                    }
                }
            });

    @ArchTest
    static final ArchRule valuesDoNotChange = fields().that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("loamline.yard..", "loamline.account..", "loamline.geometry..")
            .and()
            .areDeclaredInClassesThat()
            .arePublic()
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule mapsKeepTheirOrder = noClasses()
            .should()
            .callMethodWhere(new DescribedPredicate<>("Map.of has two pairs or more") {
                @Override
                public boolean test(JavaMethodCall call) {
                    return call.getTargetOwner().isEquivalentTo(Map.class)
                            && call.getName().equals("of")
                            && call.getTarget().getRawParameterTypes().size() > 2;
                }
            })
            .because("its order differs from run to run, and results must not");
}
