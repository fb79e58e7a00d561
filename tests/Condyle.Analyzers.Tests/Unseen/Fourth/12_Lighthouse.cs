using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R12;

public abstract class Building : IRigDefinition
{
    protected RigDraft Rig { get; private set; } = null!;

    protected Joint Base { get; private set; }

    protected Control Main { get; private set; }

    protected abstract string Name { get; }

    protected virtual Vector3 Standing => Vector3.Zero;

    protected virtual IEnumerable<(string Name, Vector3 At)> Doors
    {
        get { yield break; }
    }

    public void Define(RigDraft rig)
    {
        Rig = rig;
        Base = rig.Skeleton(Name).Root(Name + "_base", at: Standing);
        Main = rig.Control("main").PlacedAt(Base);
        DriveBase();
        foreach (var (name, at) in Doors)
            AddDoor(name, Base.Child(name, at: at));
        AddParts();
    }

    protected virtual void DriveBase() => Rig.Drive(Base).ByChannels(Main);

    protected virtual Control AddDoor(string name, Joint joint)
    {
        var hinge = Rig.Control("turn_" + name).Under(Main).PlacedAt(joint).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
        Rig.Drive(joint).ByChannels(hinge);
        return hinge;
    }

    protected abstract void AddParts();
}

public abstract class Tower : Building
{
    protected sealed override void AddParts()
    {
        var below = Base;
        Node above = Main;
        for (var floor = 1; floor <= Floors; floor++)
        {
            below = below.Child($"floor{floor}", at: Vector3.UnitY * FloorHeight(floor));
            var sway = Rig.Control($"sway{floor}").Under(above).PlacedAt(below).LimitTurn(Axis.X, -SwayDegrees, SwayDegrees).LimitTurn(Axis.Z, -SwayDegrees, SwayDegrees);
            Rig.Drive(below).ByChannels(sway);
            above = sway;
        }

        Top(below, above);
    }

    protected virtual int Floors => 3;

    protected virtual float SwayDegrees => 2;

    protected virtual float FloorHeight(int floor) => 3.2f;

    protected abstract void Top(Joint joint, Node above);
}

public sealed class Lighthouse : Tower
{
    protected override string Name => "lighthouse";

    protected override int Floors => base.Floors + 2;

    protected override Vector3 Standing => new(0, 2.5f, 0);

    protected override IEnumerable<(string Name, Vector3 At)> Doors
    {
        get
        {
            foreach (var door in base.Doors)
                yield return door;
            yield return ("door", new Vector3(0.4f, 0, 3));
            yield return ("hatch", new Vector3(-0.3f, 2, 2.9f));
        }
    }

    protected override float FloorHeight(int floor) => base.FloorHeight(floor) - 0.1f * floor;

    protected override Control AddDoor(string name, Joint joint) => base.AddDoor(name, joint).LimitTurn(Axis.Y, 0, name == "hatch" ? 60 : 110);

    protected override void Top(Joint joint, Node above)
    {
        var lamp = joint.Child("lamp", at: new Vector3(0, 1.4f, 0));
        var byHand = Rig.Control("lamp_hand").Under(above).PlacedAt(lamp).Lock(Channels.Move);
        var byClock = Rig.Control("lamp_clock").Under(above).PlacedAt(lamp).Lock(Channels.All ^ Channels.TurnY);
        var clock = byHand.Switch("clock", 1);
        Rig.Blend(lamp).From(byHand, clock.Inverse).From(byClock, clock);
        Rig.Label("clock_label", "CLOCKWORK").ShownBy(clock).Under(above);
        Rig.Group("beam").Under(byClock).Accept("CDY1001", "the light artists look it up by this name");
    }
}
