/**
 * Tests that use the real window as a person does, by mouse and keys, on a screen in memory. Grouped by what the
 * person is about. They wait for conditions and never for a time.
 */
package loamline.desk.ui;
