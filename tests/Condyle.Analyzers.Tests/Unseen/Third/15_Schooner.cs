using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R15;

/// <summary>A three-masted topsail schooner.</summary>
public sealed class Schooner : IRigDefinition
{
    public void Define(RigDraft rig) =>
        new ShipBuilder(rig)
            .Named("schooner")
            .WithHull(hull => hull
                .Long(32f)
                .WithRibs(15)
                .WithRudder(rudder => rudder.At(-16f).Swinging(35f)))
            .WithMast("fore", mast => mast
                .At(9f).Tall(24f).InSections(3)
                .WithYard(yard => yard.High(0.5f).Wide(7f).WithReefPoints(8))
                .WithYard(yard => yard.High(0.8f).Wide(5f).WithReefPoints(6))
                .WithGaff(gaff => gaff.Long(7f).WithBoom()))
            .WithMast("main", mast => mast
                .At(0f).Tall(26f).InSections(4)
                .WithYard(yard => yard.High(0.75f).Wide(5f).WithReefPoints(6))
                .WithGaff(gaff => gaff.Long(8f).WithBoom()))
            .WithMast("mizzen", mast => mast
                .At(-9f).Tall(21f).InSections(3)
                .WithGaff(gaff => gaff.Long(7.5f).WithBoom()))
            .WithAnchors(anchor => anchor.Cable(12))
            .Build();
}

internal sealed class ShipBuilder(RigDraft rig)
{
    private readonly HullBuilder hull = new();
    private readonly List<MastBuilder> masts = [];
    private AnchorBuilder? anchor;
    private string name = "ship";

    public ShipBuilder Named(string value) => Set(() => name = value);

    public ShipBuilder WithHull(Action<HullBuilder> configure) => Set(() => configure(hull));

    public ShipBuilder WithMast(string mast, Action<MastBuilder> configure)
    {
        var builder = new MastBuilder(mast);
        configure(builder);
        masts.Add(builder);
        return this;
    }

    public ShipBuilder WithAnchors(Action<AnchorBuilder> configure) => Set(() => configure(anchor = new AnchorBuilder()));

    public void Build()
    {
        var yard = new Shipyard(rig, rig.Skeleton(name).Root("keel"));
        hull.Build(yard);
        masts.ForEach(mast => mast.Build(yard));
        anchor?.Build(yard);
    }

    private ShipBuilder Set(Action change) { change(); return this; }
}

internal sealed class Shipyard
{
    public Shipyard(RigDraft rig, Joint keel)
    {
        Rig = rig;
        Keel = keel;
        World = rig.Control("world");
        Hull = Handle("hull", World, keel);
    }

    public RigDraft Rig { get; }
    public Joint Keel { get; }
    public Control World { get; }
    public Control Hull { get; }

    public Control Handle(string part, Control above, Joint joint)
    {
        var control = Rig.Control($"handle_{part}").Under(above).PlacedAt(joint);
        Rig.Drive(joint).ByChannels(control);
        return control;
    }
}

internal sealed class HullBuilder
{
    private readonly RudderBuilder rudder = new();
    private float length = 10;
    private int ribs;

    public HullBuilder Long(float metres) { length = metres; return this; }
    public HullBuilder WithRibs(int count) { ribs = count; return this; }
    public HullBuilder WithRudder(Action<RudderBuilder> configure) { configure(rudder); return this; }

    public void Build(Shipyard yard)
    {
        for (var i = 0; i < ribs; i++)
        {
            var z = length * ((i + 0.5f) / ribs - 0.5f);
            foreach (var side in Side.Both)
                yard.Handle($"rib_{i}_{side}", yard.Hull, yard.Keel.Child($"rib_{i}_{side}", at: new(3f * side.Sign, 1.5f, z))).Lock(Channels.Move);
        }

        rudder.Build(yard);
    }
}

internal sealed class RudderBuilder
{
    private float z;
    private float most;

    public RudderBuilder At(float metres) { z = metres; return this; }
    public RudderBuilder Swinging(float degrees) { most = degrees; return this; }

    public void Build(Shipyard yard) =>
        yard.Handle("rudder", yard.Hull, yard.Keel.Child("rudder", at: new(0, 0, z))).Lock(Channels.Move).LimitTurn(Axis.Y, -most, most);
}

internal sealed class MastBuilder(string name)
{
    private readonly List<YardBuilder> yards = [];
    private GaffBuilder? gaff;
    private float z, height;
    private int sections = 1;

    public MastBuilder At(float metres) { z = metres; return this; }
    public MastBuilder Tall(float metres) { height = metres; return this; }
    public MastBuilder InSections(int count) { sections = count; return this; }
    public MastBuilder WithYard(Action<YardBuilder> configure) { yards.Add(new YardBuilder($"{name}_yard_{yards.Count + 1}")); configure(yards[^1]); return this; }
    public MastBuilder WithGaff(Action<GaffBuilder> configure) { configure(gaff = new GaffBuilder(name)); return this; }

    public void Build(Shipyard yard)
    {
        var (joint, above) = (yard.Keel, yard.Hull);
        var made = new List<(Joint Joint, Control Control)>();
        for (var i = 0; i < sections; i++)
        {
            joint = joint.Child($"{name}_mast_{i}", at: i == 0 ? new(0, 2f, z) : new(0, height / sections, 0));
            above = yard.Handle($"{name}_mast_{i}", above, joint).Lock(Channels.Move);
            made.Add((joint, above));
        }

        yards.ForEach(built => built.Build(yard, made[Math.Min(made.Count - 1, (int)(built.Height * made.Count))]));
        gaff?.Build(yard, made[0]);
    }
}

internal sealed class YardBuilder(string name)
{
    private float width;
    private int points;

    public float Height { get; private set; }

    public YardBuilder High(float share) { Height = share; return this; }
    public YardBuilder Wide(float metres) { width = metres; return this; }
    public YardBuilder WithReefPoints(int count) { points = count; return this; }

    public void Build(Shipyard yard, (Joint Joint, Control Control) mast)
    {
        var sling = mast.Joint.Child(name, at: new(0, 1, 0.4f));
        var brace = yard.Handle(name, mast.Control, sling).LimitTurn(Axis.Y, -50, 50);
        var furled = brace.Switch("furled");
        foreach (var side in Side.Both)
            for (var i = 1; i <= points; i++)
            {
                var point = sling.Child($"{name}_reef_{i}_{side}", at: new(width * i / points * side.Sign, -0.2f, 0));
                var hanging = yard.Rig.Control($"{point}_hang").Under(brace).PlacedAt(point);
                var gathered = yard.Rig.Group($"{point}_gathered_group").Under(brace);
                yard.Rig.Blend(point).From(hanging, furled.Inverse).From(gathered, furled);
            }
    }
}

internal sealed class GaffBuilder(string mast)
{
    private float length;
    private bool hasBoom;

    public GaffBuilder Long(float metres) { length = metres; return this; }
    public GaffBuilder WithBoom() { hasBoom = true; return this; }

    public void Build(Shipyard yard, (Joint Joint, Control Control) on)
    {
        foreach (var (part, y, rise) in new[] { ("gaff", 8f, 0.5f), ("boom", 0.5f, 0f) }.Take(hasBoom ? 2 : 1))
        {
            var jaws = on.Joint.Child($"{mast}_{part}", at: new(0, y, -0.3f));
            var swing = yard.Handle($"{mast}_{part}", on.Control, jaws).Lock(Channels.Move).LimitTurn(Axis.Y, -80, 80);
            yard.Handle($"{mast}_{part}_peak", swing, jaws.Child($"{mast}_{part}_peak", at: new(0, rise * length, -length)));
        }
    }
}

internal sealed class AnchorBuilder
{
    private int links;

    public AnchorBuilder Cable(int count) { links = count; return this; }

    public void Build(Shipyard yard)
    {
        foreach (var side in Side.Both)
        {
            var (joint, above) = (yard.Keel, yard.Hull);
            for (var i = 0; i < links; i++)
            {
                joint = joint.Child($"cable_{i}_{side}", at: i == 0 ? new(1.5f * side.Sign, 2, 14) : new(0, -0.8f, 0));
                above = yard.Handle($"cable_{i}_{side}", above, joint);
            }
        }
    }
}
