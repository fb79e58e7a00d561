using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R04;

/// <summary>A harbour seal: a spine of many vertebrae, two pairs of flippers; its parts are wired together by a small container.</summary>
public sealed class HarbourSeal : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var services = new Services()
            .Add(() => rig)
            .Add(() => new SpineOptions("spine", Vertebrae: 6, Spacing: 0.19f, Taper: 0.9f))
            .Add<IPoser>(s => new ChannelPoser(s.Get<RigDraft>()))
            .Add(s => new SpineService(s.Get<RigDraft>(), s.Get<IPoser>(), s.Get<SpineOptions>()))
            .Add(s => new FlipperService(s.Get<RigDraft>(), s.Get<IPoser>()));

        var pelvis = rig.Skeleton("harbour_seal").Root("pelvis", at: new Vector3(0, 0.18f, -0.5f));
        var spine = services.Get<SpineService>().Build(pelvis);
        var flippers = services.Get<FlipperService>();
        foreach (var side in Side.Both)
        {
            flippers.Build(new FlipperBuilder("fore", side).From(spine[^2]).Out(0.2f).Down(0.1f).WithDigits(3).Build());
            flippers.Build(new FlipperBuilder("hind", side).From(spine[0]).Out(0.08f).Back(0.25f).Build());
        }
    }
}

internal sealed class Services
{
    private readonly Dictionary<Type, Func<Services, object>> _makers = new();
    private readonly Dictionary<Type, object> _made = new();

    public Services Add<T>(Func<T> make)
        where T : class => Add(_ => make());

    public Services Add<T>(Func<Services, T> make)
        where T : class
    {
        _makers[typeof(T)] = make;
        return this;
    }

    public T Get<T>()
        where T : class
    {
        if (_made.TryGetValue(typeof(T), out var ready))
            return (T)ready;
        if (!_makers.TryGetValue(typeof(T), out var make))
            throw new InvalidOperationException($"{typeof(T).Name} is not registered.");
        var fresh = make(this);
        _made.Add(typeof(T), fresh);
        return (T)fresh;
    }
}

internal interface IPoser
{
    Posed Pose(Joint joint, Node above);
}

internal sealed class ChannelPoser : IPoser
{
    private readonly RigDraft _rig;

    public ChannelPoser(RigDraft rig) => _rig = rig ?? throw new ArgumentNullException(nameof(rig));

    public Posed Pose(Joint joint, Node above)
    {
        var control = _rig.Control("bend_" + joint.Name).Under(above).PlacedAt(joint);
        _rig.Drive(joint).ByChannels(control);
        return new Posed(joint, control);
    }
}

internal sealed record Posed(Joint Joint, Control Control);

internal sealed record SpineOptions(string Prefix, int Vertebrae, float Spacing, float Taper);

internal sealed class SpineService(RigDraft rig, IPoser poser, SpineOptions options)
{
    public IReadOnlyList<Posed> Build(Joint pelvis)
    {
        var seal = rig.Control("seal");
        var posed = new List<Posed> { poser.Pose(pelvis, seal) };
        var step = options.Spacing;
        for (var i = 1; i <= options.Vertebrae; i++, step *= options.Taper)
        {
            var joint = posed[^1].Joint.Child($"{options.Prefix}_{i:D2}", at: new Vector3(0, 0.01f * i, step));
            posed.Add(poser.Pose(joint, posed[^1].Control));
        }

        var head = posed[^1].Joint.Child("head", at: new Vector3(0, 0.05f, 0.12f));
        poser.Pose(head, posed[^1].Control).Control.LimitTurn(Axis.X, -40, 60).Lock(Channels.Move);
        return posed.AsReadOnly();
    }
}

internal sealed record FlipperPlan(string Name, Side Side, Posed Root, Vector3 Offset, int Digits);

internal sealed class FlipperBuilder(string name, Side side)
{
    private Posed? _root;
    private Vector3 _offset;
    private int _digits;

    public FlipperBuilder From(Posed root)
    {
        _root = root;
        return this;
    }

    public FlipperBuilder Out(float metres) => Shift(Vector3.UnitX * side.Sign * metres);

    public FlipperBuilder Down(float metres) => Shift(-Vector3.UnitY * metres);

    public FlipperBuilder Back(float metres) => Shift(-Vector3.UnitZ * metres);

    public FlipperBuilder WithDigits(int digits)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(digits);
        _digits = digits;
        return this;
    }

    public FlipperPlan Build() =>
        new($"{name}_flipper", side, _root ?? throw new InvalidOperationException("A flipper needs a root; call From first."), _offset, _digits);

    private FlipperBuilder Shift(Vector3 by)
    {
        _offset += by;
        return this;
    }
}

internal sealed class FlipperService(RigDraft rig, IPoser poser)
{
    public void Build(FlipperPlan plan)
    {
        var (name, side, root, offset, digits) = plan;
        var blade = poser.Pose(root.Joint.Child($"{name}_{side}", at: offset), root.Control);
        var holder = rig.Group($"{name}_{side}_group").Under(blade.Control);
        for (var digit = 0; digit < digits; digit++)
        {
            var joint = blade.Joint.Child($"{name}_digit{digit + 1}_{side}", at: new Vector3(side.Sign * 0.14f, -0.02f, 0.03f * (1 - digit)));
            _ = poser.Pose(joint, holder) with { Control = blade.Control };
        }
    }
}
