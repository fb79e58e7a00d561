using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R12;

public sealed class BellBuoy : IRigDefinition
{
    private enum Stage
    {
        Start,
        Float,
        Cage,
        Bell,
        Clapper,
        Lamp,
        Chain,
        Link,
        Sinker,
        Waves,
        Finished,
    }

    private const int LinkCount = 18;
    private const int ClapperCount = 4;

    private sealed class Work
    {
        public required RigDraft Rig { get; init; }

        public Skeleton Skeleton { get; set; }

        public Joint Float { get; set; }

        public Joint Cage { get; set; }

        public Joint Bell { get; set; }

        public Joint Last { get; set; }

        public Control World { get; set; }

        public Control FloatControl { get; set; }

        public Control LastControl { get; set; }

        public int Made { get; set; }

        public List<Joint> Links { get; } = [];
    }

    private static readonly Dictionary<Stage, Func<Work, Stage>> Transitions = new()
    {
        [Stage.Start] = Start,
        [Stage.Float] = MakeFloat,
        [Stage.Cage] = MakeCage,
        [Stage.Bell] = MakeBell,
        [Stage.Clapper] = MakeClapper,
        [Stage.Lamp] = MakeLamp,
        [Stage.Chain] = BeginChain,
        [Stage.Link] = MakeLink,
        [Stage.Sinker] = MakeSinker,
        [Stage.Waves] = MakeWaves,
    };

    public void Define(RigDraft rig)
    {
        var work = new Work { Rig = rig };
        var stage = Stage.Start;
        var steps = 0;
        while (stage != Stage.Finished)
        {
            if (++steps > 100)
                throw new InvalidOperationException($"The buoy is stuck in {stage}.");
            stage = Transitions[stage](work);
        }
    }

    private static Stage Start(Work work)
    {
        work.Skeleton = work.Rig.Skeleton("bell_buoy");
        work.World = work.Rig.Control("world");
        return Stage.Float;
    }

    private static Stage MakeFloat(Work work)
    {
        work.Float = work.Skeleton.Root("float");
        work.FloatControl = work.Rig.Control("bob").Under(work.World).PlacedAt(work.Float).LimitMove(Axis.Y, -1.5f, 1.5f);
        return Stage.Cage;
    }

    private static Stage MakeCage(Work work)
    {
        work.Cage = work.Float.Child("cage", at: new Vector3(0f, 1.2f, 0f));
        var sway = work.Rig.Control("sway").Under(work.FloatControl).PlacedAt(work.Cage).Lock(Channels.Move);
        work.Rig.Drive(work.Cage).ByChannels(sway);
        work.LastControl = sway;
        return Stage.Bell;
    }

    private static Stage MakeBell(Work work)
    {
        work.Bell = work.Cage.Child("bell", at: new Vector3(0f, 1.1f, 0f));
        work.LastControl = work.Rig.Control("bell_swing").Under(work.LastControl).PlacedAt(work.Bell).LimitTurn(Axis.X, -15f, 15f).LimitTurn(Axis.Z, -15f, 15f);
        work.Rig.Drive(work.Bell).ByChannels(work.LastControl);
        work.Made = 0;
        return Stage.Clapper;
    }

    private static Stage MakeClapper(Work work)
    {
        var angle = MathF.Tau * work.Made / ClapperCount;
        var clapper = work.Cage.Child($"clapper_{work.Made}", at: new Vector3(MathF.Cos(angle) * 0.4f, 1.1f, MathF.Sin(angle) * 0.4f));
        var knock = work.Rig.Control($"knock_{work.Made}").Under(work.LastControl).PlacedAt(clapper).Lock(Channels.Move | Channels.TurnY);
        work.Rig.Drive(clapper).ByChannels(knock);
        work.Made++;
        return work.Made < ClapperCount ? Stage.Clapper : Stage.Lamp;
    }

    private static Stage MakeLamp(Work work)
    {
        var lamp = work.Cage.Child("lamp", JointRole.Helper, new Vector3(0f, 1.8f, 0f));
        var lit = work.FloatControl.Switch("lit", 1f);
        var up = work.Rig.Group("lamp_up").Under(work.LastControl).PlacedAt(lamp);
        var down = work.Rig.Group("lamp_down").Under(work.FloatControl).PlacedAt(lamp).Accept("CDY1001", "the light list knows it by this name");
        work.Rig.Blend(lamp).From(up, lit).From(down, lit.Inverse);
        work.Rig.Label("lit_label", "LIT").Under(up).ShownBy(lit);
        return Stage.Chain;
    }

    private static Stage BeginChain(Work work)
    {
        work.Last = work.Float;
        work.LastControl = work.FloatControl;
        work.Made = 0;
        return Stage.Link;
    }

    private static Stage MakeLink(Work work)
    {
        work.Last = work.Last.Child($"link_{work.Made:00}", at: new Vector3(work.Made % 2 == 0 ? 0.03f : -0.03f, -0.6f, 0f));
        work.Links.Add(work.Last);
        work.Made++;
        return work.Made switch
        {
            < LinkCount => Stage.Link,
            LinkCount => Stage.Sinker,
            _ => Stage.Finished,
        };
    }

    private static Stage MakeSinker(Work work)
    {
        var sinker = work.Last.Child("sinker", at: new Vector3(0f, -0.4f, 0f));
        var anchored = work.Rig.Control("sinker_place").Under(work.World).PlacedAt(sinker);
        work.Rig.Drive(sinker).ByChannels(anchored);
        work.LastControl = anchored;
        return Stage.Waves;
    }

    private static Stage MakeWaves(Work work)
    {
        var rig = work.Rig;
        var current = rig.Control("current").Under(work.World).PlacedAt(work.Links[LinkCount / 2]);
        var pulled = work.FloatControl.Switch("current");
        for (var i = 0; i < work.Links.Count; i++)
        {
            var depth = (i + 1f) / (work.Links.Count + 1);
            var hang = rig.Group($"hang_{i:00}_group").Under(work.World).PlacedAt(work.Links[i]);
            rig.Blend(hang)
                .From(work.FloatControl, (1f - depth) * pulled.Inverse)
                .From(work.LastControl, depth * pulled.Inverse)
                .From(current, pulled);
            rig.Drive(work.Links[i]).ByChannels(hang);
        }

        rig.Drive(work.Float).ByChannels(work.FloatControl);
        return Stage.Finished;
    }
}
