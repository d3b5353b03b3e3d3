/**
 * The yard's file: opening, saving, what was open lately, and what survives a program that was killed.
 *
 * <p>{@link loamline.desk.store.Store} is the view model of all of it and shows nothing itself: what must be asked goes
 * through {@link loamline.desk.store.Asking}, what is to be said stands in its {@link loamline.desk.store.Notices}.
 * Nothing of the user's is lost without a question: a file that cannot be read leaves the yard in the window as it
 * is, and a file that another program changed is never written over in silence.
 *
 * <p>Every change also goes to a recovery file in the user's state folder ({@link loamline.desk.store.Recovery}), off
 * the screen's thread; the yard is a value, so that is only a reference handed over.
 */
@NullMarked
package loamline.desk.store;

import org.jspecify.annotations.NullMarked;
