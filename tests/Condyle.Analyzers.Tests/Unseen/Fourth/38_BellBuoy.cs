using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R38;

public sealed class BellBuoy : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("bell_buoy");
        var hull = skeleton.Root("hull");
        var mast = hull.Child("mast", at: new(0, 0.8f, 0));
        var (bell, clapper) = Bell(mast);
        (Joint joint, Node? under, string kind)[] plan =
        [
            (hull, null, "float"),
            (mast, hull, "bend"),
            (bell, mast, "swing"),
            (clapper, bell, "swing"),
        ];

        var world = rig.Control("world");
        var waves = rig.Control("waves").Under(world).PlacedAt(hull);
        foreach (var step in plan)
        {
            var control = step switch
            {
                ({ Name: "clapper" } joint, { } under, _) => rig.Control("ring").Under(under).PlacedAt(joint),
                (var joint, null, _) => rig.Control("drift").Under(world).PlacedAt(joint),
                (var joint, { } under, var kind) => rig.Control($"{kind}_{joint}").Under(under).PlacedAt(joint),
            };

            (float low, float high)? range = step.kind switch
            {
                "bend" => (-8, 8),
                "swing" when step.joint == clapper => (-35, 35),
                "swing" => (-20, 20),
                _ => null,
            };
            if (range is (var low, var high))
                control = control.LimitTurn(Axis.X, low, high).LimitTurn(Axis.Z, low, high);

            if (step is (_, null, "float"))
            {
                var (calm, rough) = control.Switch("waves") is var amount ? (amount.Inverse, amount) : default;
                rig.Blend(step.joint).From(control, calm).From(waves, rough);
            }
            else
            {
                rig.Drive(step.joint).ByChannels(control);
            }
        }
    }

    private static (Joint, Joint) Bell(Joint mast) =>
        mast.Child("bell", at: new Vector3(0, 0.9f, 0)) is var bell ? (bell, bell.Child("clapper", at: new Vector3(0, -0.1f, 0))) : default;
}
