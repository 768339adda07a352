package org.fallrule.reader.trap;

import java.util.List;
import org.fallrule.document.Fault;

/** Something that the layers of a plan may get wrong together. */
interface Trap {
    /** What to tell of it; nothing where the plan does not look as if. */
    List<Fault> problems(PlanAsRead plan);
}
