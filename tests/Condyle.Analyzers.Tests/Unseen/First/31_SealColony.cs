using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R31;

/// <summary>The seals on the slipway, rigged as a colony. Services are wired by hand here, in the one place that knows all of them.</summary>
public sealed class SealColony : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        ServiceRegistry services = new ServiceRegistry();
        services.Register<INameRegistry>(() => new NameRegistry());
        services.Register<ISealRepository>(() => new InMemorySealRepository());
        services.Register(() => new SealRigger(rig, services.Resolve<INameRegistry>()));

        SealRigger rigger = services.Resolve<SealRigger>();
        LabelWriter labels = new LabelWriter(rig);
        rigger.SealRigged += labels.OnSealRigged;
        foreach (SealProfile profile in services.Resolve<ISealRepository>().FindAll().OrderBy(seal => seal))
            rigger.Rig(profile);

        rigger.SealRigged -= labels.OnSealRigged;
    }
}

internal sealed class ServiceRegistry
{
    private readonly Dictionary<Type, Func<object>> suppliers = new Dictionary<Type, Func<object>>();
    private readonly Dictionary<Type, object> singletons = new Dictionary<Type, object>();

    public void Register<TService>(Func<TService> supplier)
        where TService : class => suppliers[typeof(TService)] = supplier;

    public TService Resolve<TService>()
        where TService : class
    {
        if (!singletons.TryGetValue(typeof(TService), out object? instance))
        {
            instance = suppliers[typeof(TService)].Invoke();
            singletons.Add(typeof(TService), instance);
        }

        return (TService)instance;
    }
}

internal enum AgeClass
{
    Bull,
    Cow,
    Pup,
}

internal sealed class SealProfile(string name, AgeClass age, float length, Vector3 place) : IComparable<SealProfile>
{
    public string Name { get; } = name;
    public AgeClass Age { get; } = age;
    public float Length { get; } = length;
    public Vector3 Place { get; } = place;

    public IBodyStrategy BodyStrategy => Age == AgeClass.Pup ? new ShortBodyStrategy() : new LongBodyStrategy();

    public int CompareTo(SealProfile? other)
    {
        if (other is null)
            return 1;

        int byAge = ((int)Age).CompareTo((int)other.Age);
        return byAge != 0 ? byAge : other.Length.CompareTo(Length);
    }
}

internal interface ISealRepository
{
    IReadOnlyCollection<SealProfile> FindAll();
}

internal sealed class InMemorySealRepository : ISealRepository
{
    public IReadOnlyCollection<SealProfile> FindAll() => new List<SealProfile>
    {
        new SealProfile("pip", AgeClass.Pup, 0.8f, new Vector3(1.2f, 0.1f, 0.4f)),
        new SealProfile("bruno", AgeClass.Bull, 2.1f, new Vector3(0, 0.25f, 0)),
        new SealProfile("pip", AgeClass.Pup, 0.7f, new Vector3(1.6f, 0.1f, -0.2f)),
        new SealProfile("gerda", AgeClass.Cow, 1.7f, new Vector3(2.4f, 0.2f, 0.9f)),
    }.AsReadOnly();
}

/// <summary>How many spine joints a body has, and how long each one is.</summary>
internal interface IBodyStrategy
{
    IEnumerable<float> GetSegments(float length);
}

internal sealed class ShortBodyStrategy : IBodyStrategy
{
    public IEnumerable<float> GetSegments(float length)
    {
        yield return length * 0.55f;
        yield return length * 0.45f;
    }
}

internal sealed class LongBodyStrategy : IBodyStrategy
{
    private const int SegmentCount = 4;

    public IEnumerable<float> GetSegments(float length) => Enumerable.Repeat(length / SegmentCount, SegmentCount);
}

internal sealed class DuplicateNameException(string name) : Exception("A seal called '" + name + "' is here already.");

internal interface INameRegistry
{
    string Reserve(string name);
}

internal sealed class NameRegistry : INameRegistry
{
    private readonly SortedSet<string> reserved = new SortedSet<string>(StringComparer.Ordinal);

    public string Reserve(string name) => reserved.Add(name) ? name : throw new DuplicateNameException(name);
}

internal sealed class SealRiggedEventArgs(string name, AgeClass age, Control head) : EventArgs
{
    public string Name { get; } = name;
    public AgeClass Age { get; } = age;
    public Control Head { get; } = head;
}

internal sealed class SealRigger(RigDraft rig, INameRegistry names)
{
    private readonly Skeleton skeleton = rig.Skeleton("seal_colony");

    public event EventHandler<SealRiggedEventArgs>? SealRigged;

    public void Rig(SealProfile profile)
    {
        string name = ReserveName(profile.Name);
        Joint body = skeleton.Root(name + "_belly", at: profile.Place);
        Control master = rig.Control(name).PlacedAt(body);
        rig.Drive(body).ByChannels(master);

        Joint joint = body;
        Control above = master;
        int number = 1;
        foreach (float segment in profile.BodyStrategy.GetSegments(profile.Length))
        {
            joint = joint.Child(name + "_spine_" + number, at: new Vector3(0, 0.03f * profile.Length, segment));
            above = CreateTurn(joint, above, 35f / number++);
        }

        foreach (Side side in Side.Both)
        {
            Joint flipper = body.Child(name + "_flipper_" + side, at: new Vector3(0.2f * profile.Length * side.Sign, -0.05f, 0.1f));
            Control control = CreateTurn(flipper, master, 60);
            control.LimitTurn(Axis.Y, -15, 15);
        }

        SealRigged?.Invoke(this, new SealRiggedEventArgs(name, profile.Age, above));
    }

    private string ReserveName(string wanted)
    {
        int attempt = 1;
        string name = wanted;
        while (true)
        {
            try
            {
                return names.Reserve(name);
            }
            catch (DuplicateNameException)
            {
                attempt++;
                name = wanted + attempt;
            }
        }
    }

    private Control CreateTurn(Joint joint, Control above, float range)
    {
        Control control = rig.Control("turn_" + joint.Name).Under(above).PlacedAt(joint).Lock(Channels.Move).LimitTurn(Axis.X, -range, range);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}

internal sealed class LabelWriter(RigDraft rig)
{
    private int written;

    public void OnSealRigged(object? sender, SealRiggedEventArgs e) =>
        rig.Label(string.Format("label_{0}_{1}", ++written, e.Name), e.Age.ToString()).Under(e.Head).ShownBy(1f);
}
