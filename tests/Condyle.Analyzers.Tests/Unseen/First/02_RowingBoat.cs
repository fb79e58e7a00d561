using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R02;

/// <summary>A gig with three thwarts: six oars that are pulled, or lie shipped along the gunwale, and a rudder under its tiller.</summary>
public sealed class RowingBoat : IRigDefinition
{
    private const int Thwarts = 3;

    public void Define(RigDraft rig)
    {
        Joint keel = rig.Skeleton("gig").Root("keel", JointRole.Helper), hull = keel.Child("hull", at: new(0, 0.35f, 0));
        var water = rig.Control("water").PlacedAt(keel).Lock(Channels.TurnX | Channels.TurnZ);
        var heel = rig.Control("heel").Under(water).PlacedAt(hull).LimitTurn(Axis.Z, -25, 25).LimitTurn(Axis.X, -15, 15);
        foreach (var (joint, control) in new[] { (keel, water), (hull, heel) })
            rig.Drive(joint).ByChannels(control);

        var stroke = rig.Control("stroke").Under(heel);
        var shipped = stroke.Switch("shipped");

        Crew crew = new(rig, hull, heel, shipped);
        var oars = Enumerable.Range(0, Thwarts).SelectMany(_ => Side.Both, crew.Oar).ToList();
        oars.ForEach(oar => shipped.AlsoOn(oar));

        new Rudder(rig, hull, heel).Hang();
        rig.Label("oars_label", oars.Count > 1 ? $"{oars.Count} oars shipped" : "oar shipped").Under(stroke).ShownBy(shipped);
    }

    private sealed class Crew(RigDraft rig, Joint hull, Control boat, Switch shipped)
    {
        private readonly Group oars = rig.Group("oars_group").Under(boat);

        public Control Oar(int bench, Side side) =>
            Pull(Name(bench, side), side, hull.Child($"rowlock_{Name(bench, side)}", at: new(side.Sign * 0.7f, 0.3f, Station(bench))));

        private Control Pull(string name, Side side, Joint rowlock)
        {
            Joint At(string part, float x, float y) => rowlock.Child($"{part}_{name}", at: new(side.Sign * x, y, 0));
            var (loom, blade) = (At("loom", -0.5f, 0.12f), At("blade", 1.9f, -0.45f));
            var (pull, stow) = (Own($"pull_{name}", rowlock).LimitTurn(Axis.Y, -50, 50), Own($"stow_{name}", rowlock).Lock(Channels.Turn));
            rig.Blend(rowlock).From(pull, shipped.Inverse).From(stow, shipped);

            rig.Drive(loom).ByChannels(rig.Control($"grip_{name}").Under(pull).PlacedAt(loom).Lock(Channels.Move));
            rig.Drive(blade).ByChannels(rig.Control($"feather_{name}").Under(pull).PlacedAt(blade).Lock(Channels.Move).LimitTurn(Axis.X, -90, 5));
            return pull;
        }

        private Control Own(string name, Joint at) => rig.Control(name).Under(oars).PlacedAt(at).Lock(Channels.Move);

        private static float Station(int bench) => 0.9f - bench * 0.85f;

        private static string Name(int bench, Side side) => $"{bench switch { 0 => "bow", Thwarts - 1 => "stroke", _ => $"mid{bench}" }}_{side}";
    }

    private readonly record struct Rudder(RigDraft Rig, Joint Hull, Control Boat)
    {
        public void Hang()
        {
            var stock = Hull.Child("rudder", at: new Vector3(0, 0.1f, -1.9f));
            var tiller = stock.Child("tiller", at: Vector3.UnitZ * 0.55f + Vector3.UnitY * 0.35f);
            var helm = Drive(stock, Boat, "helm").Lock(Channels.All & ~Channels.TurnY).LimitTurn(Axis.Y, -35, 35);
            _ = Drive(tiller, helm, "tiller_lift").LimitTurn(Axis.X, -10, 60);
        }

        private Control Drive(Joint joint, Control above, string name)
        {
            var control = Rig.Control(name).Under(above).PlacedAt(joint);
            return (Rig.Drive(joint).ByChannels(control), control).control;
        }
    }
}
