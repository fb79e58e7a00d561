using System.Numerics;
using Condyle;

namespace Unseen.Second.R20;

/// <summary>The dinghy with two oars. An oar lies in the boat, sits in its rowlock or is in the rower's hands.</summary>
public sealed class RowBoat : IRigDefinition
{
    private readonly record struct Boat(Joint Hull, Control Float, Group Parts);

    private readonly record struct Oar(Side Side, Joint Lock, Joint Loom, Joint Blade)
    {
        public static Oar In(Boat boat, Side side)
        {
            var rowlock = boat.Hull.Child($"rowlock_{side}", at: new(0.65f * side.Sign, 0.35f, -0.1f));
            var loom = rowlock.Child($"loom_{side}", at: new(-0.5f * side.Sign, 0.08f, 0));
            var blade = loom.Child($"blade_{side}", at: new(2.1f * side.Sign, -0.3f, 0));
            return new(side, rowlock, loom, blade);
        }
    }

    private abstract record Thwart(float Z)
    {
        public sealed record Rowing(float Z) : Thwart(Z);

        public sealed record Passenger(float Z, bool Cushion) : Thwart(Z);

        public sealed record Stern(float Z, string Fitting) : Thwart(Z);
    }

    private static readonly Thwart[] Thwarts =
    [
        new Thwart.Rowing(-0.3f),
        new Thwart.Passenger(0.8f, Cushion: true),
        new Thwart.Passenger(1.2f, Cushion: false),
        new Thwart.Stern(-1.4f, "tiller"),
    ];

    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("row_boat").Root("hull");
        var water = rig.Control("water");
        var floating = rig.Control("float_boat").Under(water).PlacedAt(hull);
        rig.Drive(hull).ByChannels(floating);
        var parts = rig.Group("boat_group").Under(water).PlacedAt(hull);
        rig.Drive(parts).ByMatrix(floating);

        var boat = new Boat(hull, floating, parts);
        foreach (var thwart in Thwarts)
            Sit(rig, boat, thwart);

        var (left, right) = (Oar.In(boat, Side.Left), Oar.In(boat, Side.Right));
        Row(rig, boat, left);
        Row(rig, boat, right);
    }

    private static void Sit(RigDraft rig, Boat boat, Thwart thwart)
    {
        var (name, role) = thwart switch
        {
            Thwart.Rowing => ("thwart_rowing", JointRole.Helper),
            Thwart.Passenger { Cushion: true, Z: < 1 } => ("cushion_fore", JointRole.Deform),
            Thwart.Passenger { Cushion: true } => ("cushion_bow", JointRole.Deform),
            Thwart.Passenger => ("thwart_bow", JointRole.Helper),
            Thwart.Stern { Fitting: var fitting } => (fitting, JointRole.Deform),
            _ => ("thwart", JointRole.Helper),
        };

        var joint = boat.Hull.Child(name, role, new Vector3(0, 0.3f, thwart.Z));
        var control = rig.Control($"set_{name}").Under(boat.Parts).PlacedAt(joint);
        if (thwart is Thwart.Stern)
            control.Lock(Channels.Move | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -40, 40);
        rig.Drive(joint).ByChannels(control);
    }

    private static void Row(RigDraft rig, Boat boat, Oar oar)
    {
        var pivot = rig.Control($"row_{oar.Side}").Under(boat.Parts).PlacedAt(oar.Lock).Lock(Channels.Move);
        rig.Drive(oar.Lock).ByChannels(pivot);

        var slide = rig.Control($"slide_oar_{oar.Side}").Under(pivot).PlacedAt(oar.Loom).Lock(Channels.Turn);
        var held = rig.Control($"hands_{oar.Side}").Under(boat.Float).PlacedAt(oar.Loom);
        var stowed = rig.Group($"stowed_{oar.Side}_group").Under(boat.Parts).PlacedAt(oar.Loom);

        var inHands = pivot.Switch("in_hands").AlsoOn(held);
        var isStowed = pivot.Switch("stowed");
        rig.Blend(oar.Loom)
            .From(stowed, isStowed)
            .From(held, inHands * isStowed.Inverse)
            .From(slide, inHands.Inverse);

        var feather = rig.Control($"feather_{oar.Side}").Under(pivot).PlacedAt(oar.Blade).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        rig.Drive(oar.Blade).ByChannels(feather);
    }
}
