/**
 * The demo yards under {@code maps/}: invented lots, drawn in code, and the aerial pictures under them, painted
 * in code. After a change write the files anew with {@code mvn test -Dtest=DemoFilesTest
 * -Dloamline.writeDemo=true}.
 */
@NullMarked
package loamline.demo;

import org.jspecify.annotations.NullMarked;
