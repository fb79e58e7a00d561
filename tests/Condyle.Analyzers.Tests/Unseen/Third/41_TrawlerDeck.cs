using System;
using System.Collections;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R41;

public interface IEntity<out TKey>
    where TKey : notnull
{
    TKey Key { get; }
}

public interface IRepository<TKey, TEntity> : IEnumerable<TEntity>
    where TKey : notnull
    where TEntity : class, IEntity<TKey>
{
    TEntity Add(TEntity entity);

    TEntity Get(TKey key);

    bool TryGet(TKey key, [NotNullWhen(true)] out TEntity? entity);

    IEnumerable<TEntity> Find(ISpecification<TEntity> specification);
}

public interface ISpecification<in TEntity>
{
    bool IsMetBy(TEntity entity);
}

public sealed class Specification<TEntity>(Predicate<TEntity> test) : ISpecification<TEntity>
{
    public bool IsMetBy(TEntity entity) => test(entity);

    public Specification<TEntity> And(ISpecification<TEntity> other) => new(entity => test(entity) && other.IsMetBy(entity));
}

public class InMemoryRepository<TKey, TEntity> : IRepository<TKey, TEntity>
    where TKey : notnull
    where TEntity : class, IEntity<TKey>
{
    private readonly List<TEntity> order = [];
    private readonly Dictionary<TKey, TEntity> byKey = [];

    public TEntity Add(TEntity entity)
    {
        byKey.Add(entity.Key, entity);
        order.Add(entity);
        return entity;
    }

    public TEntity Get(TKey key) => TryGet(key, out var entity) ? entity : throw new KeyNotFoundException($"There is no {typeof(TEntity).Name} '{key}'.");

    public bool TryGet(TKey key, [NotNullWhen(true)] out TEntity? entity) => byKey.TryGetValue(key, out entity);

    public IEnumerable<TEntity> Find(ISpecification<TEntity> specification) => order.Where(specification.IsMetBy);

    public IEnumerator<TEntity> GetEnumerator() => order.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

public sealed record JointEntity(string Key, Joint Joint, string Kind) : IEntity<string>;

public sealed record ControlEntity(string Key, Control Control, JointEntity? Moves) : IEntity<string>;

public sealed class RigUnitOfWork(RigDraft draft)
{
    public RigDraft Draft { get; } = draft;

    public IRepository<string, JointEntity> Joints { get; } = new InMemoryRepository<string, JointEntity>();

    public IRepository<string, ControlEntity> Controls { get; } = new InMemoryRepository<string, ControlEntity>();

    public void Commit()
    {
        foreach (var entity in Controls)
        {
            if (entity.Moves is { } moved)
                Draft.Drive(moved.Joint).ByChannels(entity.Control);
        }
    }
}

public interface IRigService
{
    void Execute(RigUnitOfWork work);
}

public sealed class HullService : IRigService
{
    public void Execute(RigUnitOfWork work)
    {
        var hull = work.Joints.Add(new("hull", work.Draft.Skeleton("trawler_deck").Root("hull"), "hull"));
        var world = work.Controls.Add(new("world", work.Draft.Control("world"), null));
        work.Controls.Add(new("heave", work.Draft.Control("heave").Under(world.Control).PlacedAt(hull.Joint), hull));
    }
}

public sealed class GantryService : IRigService
{
    public void Execute(RigUnitOfWork work)
    {
        var hull = work.Joints.Get("hull").Joint;
        foreach (var side in Side.Both)
        {
            var foot = Add($"gantry_foot_{side}", hull, new(2.2f * side.Sign, 1f, -8f));
            var knee = Add($"gantry_knee_{side}", foot, new(0f, 2.4f, -0.2f));
            Add($"gantry_head_{side}", knee, new(-0.4f * side.Sign, 2f, 0.1f));
            var door = Add($"otter_board_{side}", hull, new(2.6f * side.Sign, 1.2f, -9f), "gear");
            Add($"warp_{side}", door, new(0f, 0f, -2f), "gear");
        }

        Joint Add(string key, Joint above, Vector3 at, string kind = "gantry") => work.Joints.Add(new(key, above.Child(key, at: at), kind)).Joint;
    }
}

public sealed class NetDrumService : IRigService
{
    public void Execute(RigUnitOfWork work)
    {
        var drum = work.Joints.Add(new("net_drum", work.Joints.Get("hull").Joint.Child("net_drum", at: new(0f, 1.8f, -6f)), "gear"));
        var last = drum;
        for (var i = 0; i < 9; i++)
            last = work.Joints.Add(new($"net_{i}", last.Joint.Child($"net_{i}", at: new(0f, -0.1f, -0.7f)), "net"));
    }
}

public sealed class ControlService : IRigService
{
    private static readonly Specification<JointEntity> Gear = new(joint => joint.Kind is "gear");
    private static readonly Specification<JointEntity> Net = new(joint => joint.Kind is "net");
    private static readonly Specification<JointEntity> Sided = new(joint => joint.Key.EndsWith("_left", StringComparison.Ordinal) || joint.Key.EndsWith("_right", StringComparison.Ordinal));

    public void Execute(RigUnitOfWork work)
    {
        var heave = work.Controls.Get("heave").Control;
        foreach (var entity in work.Joints.Find(Gear))
            work.Controls.Add(new(entity.Key, work.Draft.Control($"haul_{entity.Key}").Under(heave).PlacedAt(entity.Joint), entity));

        var above = work.Controls.Get("net_drum").Control;
        foreach (var entity in work.Joints.Find(Net))
            above = work.Controls.Add(new(entity.Key, work.Draft.Control($"billow_{entity.Key}").Under(above).PlacedAt(entity.Joint), entity)).Control;

        foreach (var warp in work.Joints.Find(Gear.And(Sided)))
            work.Controls.Get(warp.Key).Control.Lock(Channels.TurnZ);
    }
}

public sealed class LimbService : IRigService
{
    public void Execute(RigUnitOfWork work)
    {
        var heave = work.Controls.Get("heave").Control;
        foreach (var side in Side.Both)
        {
            if (!work.Joints.TryGet($"gantry_foot_{side}", out var foot) || !work.Joints.TryGet($"gantry_head_{side}", out var head))
                continue;
            var chain = work.Draft.Chain(foot.Joint, head.Joint);
            var ram = chain.Copy("ram").Under(work.Draft.Group($"gantry_{side}_group").Under(heave));
            var goal = work.Controls.Add(new($"gantry_{side}", work.Draft.Control($"gantry_{side}").Under(heave).PlacedAt(chain.Tip), null));
            work.Draft.TwoBone(ram).Reach(goal.Control);
            work.Draft.Blend(chain).From(ram, 1f);
        }
    }
}

public sealed class TrawlerDeck : IRigDefinition
{
    private readonly IReadOnlyList<IRigService> services = [new HullService(), new GantryService(), new NetDrumService(), new ControlService(), new LimbService()];

    public void Define(RigDraft rig)
    {
        var work = new RigUnitOfWork(rig);
        foreach (var service in services)
            service.Execute(work);
        work.Commit();
    }
}
