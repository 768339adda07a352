package org.fallrule.hydrology;

import com.google.auto.service.AutoService;
import java.util.List;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;

/** The methods of this package. */
@AutoService(MethodList.class)
public final class HydrologyMethods implements MethodList {

    @Override
    public List<Method> methods() {
        return List.of(
                TableIntensity.METHOD,
                CurveIntensity.METHOD,
                CompositeRunoff.METHOD,
                RationalMethod.METHOD,
                RationalFlows.METHOD,
                FaaTime.METHOD,
                SheetFlow.METHOD,
                ShallowConcentratedFlow.METHOD,
                Kerby.METHOD,
                Kirpich.METHOD,
                KinematicWave.METHOD,
                TimeOfConcentration.METHOD,
                RoofRain.METHOD,
                LeaderCapacity.METHOD,
                CodeTable.METHOD);
    }
}
