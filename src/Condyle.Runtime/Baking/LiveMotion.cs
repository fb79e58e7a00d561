using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>A clip played on the rig, as many moments at a time as lie side by side, with the way taken off or moved as the settings ask.</summary>
internal sealed class LiveMotion(ClipPlayer player, Travel? travel, float from, CancellationToken cancellation)
{
    private LiveBlock? block;

    public CompiledRig Rig => player.Rig;

    public Clip Clip => player.Clip;

    public Travel? Travel => travel;

    /// <summary>Evaluates moments of the bake and hands them on in order, with their index.</summary>
    public void Play(IEnumerable<double> moments, Action<int, LiveMoment> take) => PlayTogether(moments, (first, live) =>
    {
        for (var moment = 0; moment < live.Count; moment++)
            take(first + moment, live[moment]);
    });

    /// <summary>The same, as many at a time as are evaluated together.</summary>
    /// <param name="moments">Seconds of the bake.</param>
    /// <param name="take">Takes them with the index of the first.</param>
    public void PlayTogether(IEnumerable<double> moments, Action<int, LiveBlock> take)
    {
        block ??= new LiveBlock(Rig, travel);
        var first = 0;
        block.Clear();
        foreach (var moment in moments)
        {
            block.Add((float)(from + moment));
            if (block.IsFull)
                Flush();
        }

        if (block.Count > 0)
            Flush();

        void Flush()
        {
            cancellation.ThrowIfCancellationRequested();
            block.Evaluate(player);
            take(first, block);
            first += block.Count;
            block.Clear();
        }
    }
}

/// <summary>The rig at one moment, as it is to be baked.</summary>
internal readonly struct LiveMoment(RigInstance live, Travel? travel)
{
    public RigInstance Live { get; } = live;

    /// <summary>The way that has been gone; none when it stays where it is.</summary>
    public Affine3d Way { get; } = travel?.Way(live) ?? Affine3d.Identity;

    public Place Place(int joint) => travel is null ? Live.Place(joint) : Baking.Place.Of(travel.World(Live, joint, Way));

    public Trs Channels(int joint) => travel is not null && travel.Changes(joint)
        ? travel.Channels(Live, joint, Way)
        : new Trs(Live.JointTranslation(joint), Live.JointRotation(joint), Live.JointScale(joint));
}
