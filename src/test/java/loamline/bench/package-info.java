/** Benchmarks: {@code mvn -Pbench verify -Dbench=CorePlan}. */
package loamline.bench;
