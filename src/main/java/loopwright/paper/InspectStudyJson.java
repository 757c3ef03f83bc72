package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loopwright.answer.InspectAnswer;
import loopwright.answer.NextSteps;
import loopwright.loop.Machine;
import loopwright.loop.study.Course;
import loopwright.loop.study.Effect;
import loopwright.loop.study.Quiet;
import loopwright.loop.study.SpeedPoint;
import loopwright.loop.study.WarmUp;

/** What a build does when something changes, for programs. */
final class InspectStudyJson {

    private InspectStudyJson() {}

    static void put(Json json, InspectAnswer answer) {
        json.put("sensitivities", sensitivities(answer));
        json.put("duties", curve(answer));
        json.put("quietest", answer.quietest().map(q -> quietest(answer, q)).orElse(Json.NOTHING));
        answer.warmUp().ifPresent(w -> json.put("warm_up", warmUp(answer, w)));
        json.put("open_enough", openEnough(answer));
    }

    private static List<Map<String, Object>> sensitivities(InspectAnswer answer) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Effect effect : answer.sensitivities()) {
            Map<String, Object> one = Json.object();
            one.put("what", effect.what());
            one.put("step", effect.step());
            one.put("coolant_K", Mm.rounded(effect.kelvin(), 3));
            out.add(one);
        }
        return out;
    }

    private static List<Map<String, Object>> curve(InspectAnswer answer) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (InspectAnswer.AtDuty at : answer.curve()) {
            SpeedPoint point = at.point();
            Map<String, Object> one = Json.object();
            one.put("duty_percent", point.dutyPercent());
            one.put("coolant_over_room_K", orNothing(point.coolantOverRoomK(), 2));
            one.put("plus_minus_K", orNothing(at.coolantK(), 2));
            one.put("noise_dBA", orNothing(point.sound().levelDBA(), 1));
            out.add(one);
        }
        return out;
    }

    private static Object quietest(InspectAnswer answer, Quiet quiet) {
        Map<String, Object> one = Json.object();
        Map<String, Object> duties = Json.object();
        List<Machine.FanMount> mounts = answer.inspection().machine().mounts();
        for (int i = 0; i < mounts.size(); i++) {
            duties.put(mounts.get(i).mount(), quiet.duties().mountPercent(i));
        }
        one.put("duty_percent", duties);
        one.put("pump_duty_percent", quiet.duties().pumpPercent());
        one.put("noise_dBA", orNothing(quiet.sound().levelDBA(), 1));
        one.put("quieter_dB", Mm.rounded(quiet.quieterDB(), 1));
        one.put("coolant_C", Mm.rounded(quiet.state().water().meanC(), 2));
        return one;
    }

    private static List<Map<String, Object>> warmUp(InspectAnswer answer, WarmUp warmUp) {
        double limitC = answer.inspection().fitCase().brief().limits().coolantMaxC();
        List<Map<String, Object>> out = new ArrayList<>();
        out.add(course("switched on", warmUp.fromRoom(), limitC));
        for (Machine.FanMount mount : answer.inspection().machine().mounts()) {
            out.add(course(mount.mount() + " fans stop", warmUp.afterFansStop(Set.of(mount.mount())), limitC));
        }
        out.add(course("all fans stop", warmUp.afterAllFansStop(), limitC));
        return out;
    }

    private static Map<String, Object> course(String what, Course course, double limitC) {
        Map<String, Object> one = Json.object();
        one.put("event", what);
        one.put("after_10_min_C", Mm.rounded(course.afterTenMinutesC(), 1));
        one.put("end_C", orNothing(course.endC(), 1));
        one.put("time_constant_s", orNothing(course.timeConstantS(), 0));
        one.put("limit_passed_after_s", orNothing(course.secondsUntil(limitC), 0));
        return one;
    }

    private static List<Map<String, Object>> openEnough(InspectAnswer answer) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (NextSteps.Enough enough : answer.steps().openEnough()) {
            Map<String, Object> one = Json.object();
            one.put("mount", enough.mount());
            one.put("open_share", Mm.rounded(enough.openShare(), 3));
            Optional<Double> share = enough.enough();
            one.put("enough_share", share.isPresent() ? Mm.rounded(share.get(), 2) : Json.NOTHING);
            out.add(one);
        }
        return out;
    }

    private static Object orNothing(OptionalDouble value, int decimals) {
        return value.isPresent() ? Mm.rounded(value.getAsDouble(), decimals) : Json.NOTHING;
    }
}
