package org.fallrule.hydraulics;

import com.google.auto.service.AutoService;
import java.util.List;
import org.fallrule.hydraulics.basin.Flotation;
import org.fallrule.hydraulics.basin.HoseTest;
import org.fallrule.hydraulics.basin.SumpDrainDown;
import org.fallrule.hydraulics.gradeline.GradeLine;
import org.fallrule.hydraulics.gradeline.WaterSurface;
import org.fallrule.hydraulics.inlet.SagGrate;
import org.fallrule.hydraulics.outlet.ApronByDischarge;
import org.fallrule.hydraulics.outlet.ApronShape;
import org.fallrule.hydraulics.outlet.RiprapApron;
import org.fallrule.hydraulics.pipe.CriticalDepth;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;

/** The methods of this package and those below it. */
@AutoService(MethodList.class)
public final class HydraulicsMethods implements MethodList {

    @Override
    public List<Method> methods() {
        return List.of(
                RoundPipe.METHOD,
                NormalDepth.METHOD,
                CriticalDepth.METHOD,
                GradeLine.METHOD,
                WaterSurface.METHOD,
                SagGrate.METHOD,
                RiprapApron.METHOD,
                ApronByDischarge.METHOD,
                ApronShape.METHOD,
                SumpDrainDown.METHOD,
                Flotation.METHOD,
                HoseTest.METHOD);
    }
}
