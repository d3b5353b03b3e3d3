package loamline.findings;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sampling.CorePlan;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Yard;

/**
 * A made-up lawn of 24 m by 16 m with 24 cores, one poor spot with a planted cause, and a log with noise and gaps.
 *
 * <p>Effects and their scatter are chosen by what the causes do to a lawn, not by what the rules look for: readings
 * scatter by a quarter to a half of themselves, any column may be missing, cells are blank, stones refuse a probe
 * anywhere, harmless trees stand elsewhere, some logs carry notes of other things.
 */
final class SimulatedYard {
    enum Planted {
        HOLE,
        THATCH,
        SHADE,
        ROCK,
        LAYER,
        PET,
        PHOSPHORUS;

        String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private static final double WIDTH_M = 24;
    private static final double DEPTH_M = 16;
    private static final double CORE_STEP_M = 4;
    private static final double HEAD_STEP_M = 8;
    private static final double COLUMN_KEPT = 0.93;
    private static final double CELL_KEPT = 0.94;
    private static final double STRAY_STONE = 0.03;
    private static final double DECOY_TREE = 0.35;
    private static final double IDLE_NOTE = 0.12;
    private static final double LAB_SENT = 0.6;

    private final SplittableRandom random;
    private final Planted planted;
    private final Point middle;
    private final double radiusM;
    private final Map<Quantity, Boolean> columns = new EnumMap<>(Quantity.class);
    private final boolean layersKept;
    private final boolean notesKept;

    private SimulatedYard(Planted planted, SplittableRandom random) {
        this.planted = planted;
        this.random = random;
        this.middle = new Point(uniform(4, WIDTH_M - 4), uniform(4, DEPTH_M - 4));
        this.radiusM = uniform(3.3, 4.5);
        for (Quantity quantity : Quantity.values()) {
            columns.put(quantity, random.nextDouble() < COLUMN_KEPT);
        }
        layersKept = random.nextDouble() < COLUMN_KEPT;
        notesKept = random.nextDouble() < COLUMN_KEPT;
    }

    /** The findings of the poor spot of one yard. */
    static AreaFinding finding(Planted planted, long seed) {
        return new SimulatedYard(planted, new SplittableRandom(seed)).finding();
    }

    private AreaFinding finding() {
        List<Feature> features = new ArrayList<>(turf());
        features.addAll(heads());
        features.addAll(trees());
        double drawnM = radiusM * uniform(0.8, 1.1);
        Point drawn = middle.plus(normal(0, 0.4), normal(0, 0.4));
        features.add(new Trouble(
                "t", "poor", OptionalInt.of(3), Region.around(drawn, drawnM).outline(), Extras.NONE));
        Yard yard = Yard.empty("made up", Frame.at(new LonLat(-89, 40))).withFeatures(features);
        CorePlan plan = plan();
        List<LogRow> rows = plan.cores().stream().map(this::row).toList();
        CoreLog log = CoreLog.of(plan, rows).log().orElseThrow();
        Surroundings known = new Surroundings(
                Optional.of(Water.of(yard, new WaterOptions(0.4, false, 0, 0, 0))),
                List.of(),
                SunStudy.of(yard, new SunRequest(List.of(LocalDate.of(2027, 6, 21)), Duration.ofMinutes(30), 0.5))
                        .study(),
                lab());
        return Findings.areas(yard, known.beside(log.cores()), known, loamline.reference.Cause.published())
                .get(0);
    }

    private static List<Feature> turf() {
        return List.of(half("West", 0), half("East", WIDTH_M / 2));
    }

    private static Feature half(String zone, double x) {
        Outline outline = Outline.of(x, 0, x + WIDTH_M / 2, 0, x + WIDTH_M / 2, DEPTH_M, x, DEPTH_M);
        OptionalDouble unknown = OptionalDouble.empty();
        return new Turf(zone, zone, "", unknown, unknown, Optional.empty(), outline, Extras.NONE);
    }

    private List<Feature> heads() {
        List<Feature> heads = new ArrayList<>();
        for (double x = 0; x <= WIDTH_M; x += HEAD_STEP_M) {
            for (double y = 0; y <= DEPTH_M; y += HEAD_STEP_M) {
                Point at = new Point(x, y);
                boolean gone = planted == Planted.HOLE && at.distanceTo(middle) < HEAD_STEP_M + 0.8;
                if (!gone && random.nextDouble() > 0.03) {
                    String id = "h" + (heads.size() + 1);
                    heads.add(new Head(
                            id,
                            id,
                            "1",
                            Optional.empty(),
                            OptionalDouble.of(HEAD_STEP_M),
                            0,
                            360,
                            OptionalDouble.of(8 * uniform(0.8, 1.2)),
                            Profile.Named.CONE,
                            0.1,
                            at,
                            Extras.NONE));
                }
            }
        }
        return heads;
    }

    private List<Feature> trees() {
        List<Feature> trees = new ArrayList<>();
        if (planted == Planted.SHADE) {
            trees.add(tree("shade", middle.plus(normal(0, 0.5), -1), radiusM + 2.5));
        }
        Point elsewhere = new Point(WIDTH_M - middle.x(), DEPTH_M - middle.y());
        if (random.nextDouble() < DECOY_TREE && elsewhere.distanceTo(middle) > 9) {
            trees.add(tree("decoy", elsewhere, uniform(2, 4)));
        }
        return trees;
    }

    private static Tree tree(String key, Point at, double crownM) {
        return new Tree(
                key,
                OptionalDouble.of(crownM),
                OptionalDouble.of(9),
                0.2,
                true,
                0.05,
                OptionalDouble.of(1),
                true,
                at,
                Extras.NONE);
    }

    private CorePlan plan() {
        List<CorePlan.PlannedCore> cores = new ArrayList<>();
        for (double x = CORE_STEP_M / 2; x < WIDTH_M; x += CORE_STEP_M) {
            for (double y = CORE_STEP_M / 2; y < DEPTH_M; y += CORE_STEP_M) {
                Point at = new Point(x + uniform(-0.8, 0.8), y + uniform(-0.8, 0.8));
                int number = cores.size() + 1;
                cores.add(new CorePlan.PlannedCore(
                        "A" + number, "A", zone(at), at, number, Optional.empty(), OptionalInt.of(number)));
            }
        }
        return new CorePlan(1, List.of(), cores, List.of(), List.of(), List.of(), Map.of());
    }

    private static String zone(Point at) {
        return at.x() < WIDTH_M / 2 ? "West" : "East";
    }

    private LogRow row(CorePlan.PlannedCore core) {
        boolean poor = core.at().distanceTo(middle) <= radiusM;
        Optional<Planted> cause = poor ? Optional.of(planted) : Optional.empty();
        boolean refused = random.nextDouble() < (cause.equals(Optional.of(Planted.ROCK)) ? 0.8 : STRAY_STONE);
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        for (Reading reading : Reading.values()) {
            double read = reading.draw(this, cause);
            if (columns.getOrDefault(reading.quantity, true) && random.nextDouble() < CELL_KEPT) {
                values.put(reading.quantity, Math.max(reading.least, read));
            }
        }
        if (refused) {
            values.put(Quantity.DEPTH, uniform(0.04, 0.08));
        }
        boolean clay =
                cause.equals(Optional.of(Planted.LAYER)) ? random.nextDouble() < 0.9 : random.nextDouble() < 0.08;
        String soil = clay ? "clay" : random.nextDouble() < 0.3 ? "clay loam" : "loam";
        double at = clay ? uniform(0.04, 0.1) : uniform(0.06, 0.14);
        List<SoilLayer> layers = layersKept && random.nextDouble() < CELL_KEPT && !refused
                ? List.of(new SoilLayer(0, at, "loam"), new SoilLayer(at, 0.2, soil))
                : List.of();
        return new LogRow(
                core.id(),
                "2027-05-12",
                Optional.of(LocalDate.of(2027, 5, 12)),
                values,
                refused ? Optional.of(random.nextDouble() < 0.5 ? "stone" : "refused") : Optional.empty(),
                "",
                layers,
                notesKept ? note(cause) : "",
                List.of(),
                Optional.empty(),
                OptionalInt.empty(),
                Map.of());
    }

    private String note(Optional<Planted> cause) {
        double dice = random.nextDouble();
        if (cause.equals(Optional.of(Planted.PET)) && dice < 0.8) {
            return dice < 0.4 ? "round straw spot, dark ring" : "dog lies here";
        }
        if (cause.equals(Optional.of(Planted.SHADE)) && dice < 0.4) {
            return "moss";
        }
        if (cause.equals(Optional.of(Planted.PHOSPHORUS)) && dice < 0.4) {
            return "purple tint";
        }
        return dice > 1 - IDLE_NOTE ? "near the path, dog toy" : dice > 1 - 2 * IDLE_NOTE ? "worm casts" : "";
    }

    /** A laboratory's report of both halves: always with low phosphorus planted, else as often as people send one. */
    private Optional<SoilReport> lab() {
        if (planted != Planted.PHOSPHORUS && random.nextDouble() > LAB_SENT) {
            return Optional.empty();
        }
        boolean bothLow = random.nextDouble() < 0.08;
        List<LabValue> values = new ArrayList<>();
        for (String zone : List.of("West", "East")) {
            boolean low = bothLow || (planted == Planted.PHOSPHORUS && zone.equals(zone(middle)));
            values.add(value(zone, Element.P, "ppm", "Mehlich-3", low ? uniform(6, 14) : uniform(40, 70)));
            values.add(value(zone, Element.PH, "", "", uniform(5.8, 7.2)));
        }
        return Optional.of(SoilReport.of(values, SoilOptions.USUAL));
    }

    private static LabValue value(String zone, Element element, String unit, String extractant, double value) {
        String method = element == Element.PH ? "water" : "";
        return new LabValue(
                zone,
                List.of(zone),
                element,
                value,
                LabValue.Made.of(element, unit, extractant, method, OptionalDouble.of(0.1)),
                "",
                Optional.empty(),
                1);
    }

    private double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Box and Muller. */
    private double normal(double mean, double sd) {
        double u = 1 - random.nextDouble();
        return mean + sd * Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** How a reading scatters on sound turf, and what each cause makes of it. */
    private enum Reading {
        ROOT(Quantity.ROOT, 0.01, 0.11, 0.028) {
            @Override
            double[] of(Planted cause) {
                return switch (cause) {
                    case HOLE, ROCK -> new double[] {0.055, 0.022};
                    case THATCH, LAYER -> new double[] {0.065, 0.02};
                    case SHADE -> new double[] {0.075, 0.022};
                    case PHOSPHORUS -> new double[] {0.085, 0.025};
                    case PET -> usual();
                };
            }
        },
        THATCH(Quantity.THATCH, 0.001, 0.008, 0.0035) {
            @Override
            double[] of(Planted cause) {
                return cause == Planted.THATCH ? new double[] {0.021, 0.006} : usual();
            }
        },
        VWC(Quantity.VWC, 3, 25, 5) {
            @Override
            double[] of(Planted cause) {
                return switch (cause) {
                    case HOLE -> new double[] {13, 4};
                    case ROCK -> new double[] {19, 5};
                    case THATCH -> new double[] {21, 5};
                    case SHADE, LAYER -> new double[] {29, 5};
                    default -> usual();
                };
            }
        },
        HARDNESS(Quantity.HARDNESS, 200, 1200, 330) {
            @Override
            double[] of(Planted cause) {
                return switch (cause) {
                    case HOLE -> new double[] {1700, 400};
                    case LAYER, ROCK -> new double[] {1800, 450};
                    default -> usual();
                };
            }
        },
        DROP(Quantity.DROP, 0.5, 2.5, 1.8) {
            @Override
            double[] of(Planted cause) {
                return switch (cause) {
                    case HOLE -> new double[] {5, 5};
                    case THATCH -> new double[] {9, 8};
                    default -> usual();
                };
            }
        },
        QUALITY(Quantity.QUALITY, 1, 6.6, 0.8) {
            @Override
            double[] of(Planted cause) {
                return new double[] {3.7, 1};
            }
        },
        DEPTH(Quantity.DEPTH, 0.05, 0.15, 0.01) {
            @Override
            double[] of(Planted cause) {
                return usual();
            }
        };

        private final Quantity quantity;
        private final double least;
        private final double mean;
        private final double sd;

        Reading(Quantity quantity, double least, double mean, double sd) {
            this.quantity = quantity;
            this.least = least;
            this.mean = mean;
            this.sd = sd;
        }

        double[] usual() {
            return new double[] {mean, sd};
        }

        abstract double[] of(Planted cause);

        double draw(SimulatedYard yard, Optional<Planted> cause) {
            double[] meanAndSd = cause.map(this::of).orElseGet(this::usual);
            return yard.normal(meanAndSd[0], meanAndSd[1]);
        }
    }
}
