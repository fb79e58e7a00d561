using System;
using System.Collections.Generic;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.First.R29;

/// <summary>The anchor windlass on the foredeck: one shaft, and a chain wheel on each side that is clutched to it or braked by hand.</summary>
public sealed class AnchorWindlass : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        RigContext context = new RigContext.Builder()
            .SetDraft(rig)
            .SetNamingStrategy(new SnakeCaseNamingStrategy())
            .SetSkeletonName("anchor_windlass")
            .Build();

        IAssemblyFactory factory = AssemblyFactoryProvider.Instance.GetFactory(DeckArea.Foredeck);
        var assemblies = new List<IAssembly>();
        foreach (Side side in Side.Both)
            assemblies.AddRange(new IAssembly[] { factory.CreateWheel(side), factory.CreateBrake(side) });
        assemblies.ForEach(assembly => assembly.Assemble(context));
    }
}

internal enum DeckArea { Foredeck, Afterdeck }

internal interface INamingStrategy
{
    string CreateName(params string[] parts);
}

internal sealed class SnakeCaseNamingStrategy : INamingStrategy
{
    public string CreateName(params string[] parts)
    {
        StringBuilder builder = new StringBuilder();
        foreach (string part in parts)
        {
            if (builder.Length > 0)
                builder.Append('_');
            builder.Append(part.ToLowerInvariant());
        }

        return builder.ToString();
    }
}

internal sealed class RigContext
{
    private RigContext(Builder builder)
    {
        Draft = builder.Draft ?? throw new InvalidOperationException("A context needs a draft.");
        Naming = builder.Naming ?? throw new InvalidOperationException("A context needs a naming strategy.");
        Bedplate = Draft.Skeleton(builder.SkeletonName).Root("bedplate", at: new Vector3(0, 0.15f, 0));
        Systems = Draft.Group(Naming.CreateName("systems", "group"));
        Master = Draft.Control(Naming.CreateName("windlass")).PlacedAt(Bedplate);
        Draft.Drive(Bedplate).ByChannels(Master);
        Shaft = Bedplate.Child("shaft", at: new Vector3(0, 0.55f, 0.1f));
        ShaftControl = Draft.Control(Naming.CreateName("turn", "shaft")).Under(Master).PlacedAt(Shaft)
            .Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        Draft.Drive(Shaft).ByChannels(ShaftControl);
    }

    public RigDraft Draft { get; }
    public INamingStrategy Naming { get; }
    public Joint Bedplate { get; }
    public Joint Shaft { get; }
    public Group Systems { get; }
    public Control Master { get; }
    public Control ShaftControl { get; }

    public sealed class Builder
    {
        public RigDraft? Draft { get; private set; }
        public INamingStrategy? Naming { get; private set; }
        public string SkeletonName { get; private set; } = "unnamed";

        public Builder SetDraft(RigDraft draft)
        {
            Draft = draft;
            return this;
        }

        public Builder SetNamingStrategy(INamingStrategy naming)
        {
            Naming = naming;
            return this;
        }

        public Builder SetSkeletonName(string name)
        {
            SkeletonName = name;
            return this;
        }

        public RigContext Build() => new RigContext(this);
    }
}

internal interface IAssembly
{
    void Assemble(RigContext context);
}

/// <summary>Template method: joints first, then controls, then relations.</summary>
internal abstract class AbstractSidedAssembly : IAssembly
{
    private readonly Side side;

    protected AbstractSidedAssembly(Side side) => this.side = side;

    protected Side GetSide() => side;
    protected abstract string PartName { get; }

    public void Assemble(RigContext context)
    {
        Joint joint = DeclareJoint(context, NameOf(context, PartName));
        Control control = CreateControl(context, joint);
        Relate(context, joint, control);
        AfterRelate(context, control);
    }

    protected string NameOf(RigContext context, params string[] parts)
    {
        string[] all = new string[parts.Length + 1];
        Array.Copy(parts, all, parts.Length);
        all[parts.Length] = side.ToString();
        return context.Naming.CreateName(all);
    }

    protected abstract Joint DeclareJoint(RigContext context, string name);

    protected virtual Control CreateControl(RigContext context, Joint joint)
    {
        return context.Draft.Control(NameOf(context, "turn", PartName)).Under(context.Master).PlacedAt(joint).Lock(Channels.Move);
    }

    protected virtual void Relate(RigContext context, Joint joint, Control control) => context.Draft.Drive(joint).ByChannels(control);

    protected virtual void AfterRelate(RigContext context, Control control)
    {
    }
}

internal sealed class ChainWheel(Side side) : AbstractSidedAssembly(side)
{
    protected override string PartName => "wheel";

    protected override Joint DeclareJoint(RigContext context, string name) =>
        context.Bedplate.Child(name, at: new Vector3(0.8f * GetSide().Sign, 0.55f, 0.1f));

    protected override void Relate(RigContext context, Joint joint, Control control)
    {
        Switch clutch = control.Switch("clutch_" + GetSide(), atRest: 1).AlsoOn(context.ShaftControl);
        Group carried = context.Draft.Group(NameOf(context, "clutched", PartName) + "_group").Under(context.Systems).PlacedAt(joint);
        context.Draft.Drive(carried).ByMatrix(context.ShaftControl).KeepingOffset();
        context.Draft.Blend(joint).From(carried, clutch).From(control, clutch.Inverse);
        context.Draft.Label(NameOf(context, "clutch", "label"), "clutched").Under(control).ShownBy(clutch);
    }
}

internal sealed class BandBrake(Side side) : AbstractSidedAssembly(side)
{
    protected override string PartName => "brake";

    protected override Joint DeclareJoint(RigContext context, string name) =>
        context.Bedplate.Child(name, at: new Vector3(1.05f * GetSide().Sign, 0.9f, -0.2f));

    protected override void AfterRelate(RigContext context, Control control) => control.LimitTurn(Axis.X, 0, 720);
}

internal interface IAssemblyFactory
{
    IAssembly CreateWheel(Side side);
    IAssembly CreateBrake(Side side);
}

internal sealed class ForedeckAssemblyFactory : IAssemblyFactory
{
    public IAssembly CreateWheel(Side side) => new ChainWheel(side);
    public IAssembly CreateBrake(Side side) => new BandBrake(side);
}

internal sealed class AssemblyFactoryProvider
{
    private static readonly Lazy<AssemblyFactoryProvider> Holder = new(() => new AssemblyFactoryProvider());

    private readonly IDictionary<DeckArea, IAssemblyFactory> factories = new Dictionary<DeckArea, IAssemblyFactory>();

    private AssemblyFactoryProvider() => factories.Add(DeckArea.Foredeck, new ForedeckAssemblyFactory());

    public static AssemblyFactoryProvider Instance => Holder.Value;

    public IAssemblyFactory GetFactory(DeckArea area) =>
        factories.TryGetValue(area, out IAssemblyFactory? factory) ? factory : throw new NotSupportedException("No factory for " + area);
}
