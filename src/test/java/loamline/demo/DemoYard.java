package loamline.demo;

import loamline.yard.Yard;

/**
 * A yard that nobody owns, with all that its picture needs.
 *
 * @param file name of its files, without ending
 * @param yard the outlines
 * @param scenery what the picture shows besides
 */
record DemoYard(String file, Yard yard, Scenery scenery) {}
