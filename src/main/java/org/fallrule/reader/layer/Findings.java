package org.fallrule.reader.layer;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * What is found wrong while one layer is read: notes let the reading go on, faults end it. Both lists are bounded, so that a file
 * that is wrong throughout fills neither the memory nor the report; what is not listed is counted.
 */
public final class Findings {
    public static final int MOST_FEATURE_NOTES = 1000;
    public static final int MOST_FAULTS = 100;

    private final List<Fault> fileNotes = new ArrayList<>();
    private final List<Fault> featureNotes = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private long unlisted;

    /** Notes something about a whole file; always listed. */
    public void note(Place file, String says) {
        fileNotes.add(new Fault(file, says));
    }

    /** Notes something about one feature; listed until there are {@value #MOST_FEATURE_NOTES}, then only counted. */
    public void noteFeature(Place feature, String says) {
        if (featureNotes.size() < MOST_FEATURE_NOTES) {
            featureNotes.add(new Fault(feature, says));
        } else {
            unlisted++;
        }
    }

    /**
     * Keeps what makes one feature unusable, so that others can be looked at too.
     *
     * @throws UnusableInput at the {@value #MOST_FAULTS}th fault
     */
    public void faults(UnusableInput unusable) {
        faults.addAll(unusable.faults());
        if (faults.size() >= MOST_FAULTS) {
            Place file = Place.of(faults.get(0).where().file());
            faults.add(new Fault(
                    file, "reading stopped after " + faults.size() + " faults; mend these and read the file again"));
            refuseIfFaulty();
        }
    }

    /** Ends the reading with every fault kept so far, if there is one. */
    public void refuseIfFaulty() {
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
    }

    /** Every note: those about whole files first, then those about features in file order. */
    public List<Fault> notes() {
        List<Fault> all = new ArrayList<>(fileNotes);
        all.addAll(featureNotes);
        if (unlisted > 0) {
            Place file = Place.of(featureNotes.get(0).where().file());
            all.add(new Fault(
                    file,
                    unlisted + " more notes on features are not listed; mend those listed and read the file again"));
        }
        return all;
    }
}
