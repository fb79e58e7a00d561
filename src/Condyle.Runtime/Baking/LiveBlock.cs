using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Baking;

/// <summary>The rig at the moments that lie side by side and are evaluated together; good until the next ones.</summary>
internal sealed class LiveBlock
{
    private readonly Travel? travel;
    private readonly RigCrowd crowd;
    private readonly float[] times;
    private readonly LiveMoment[] moments;
    private readonly Buffers changed;

    public LiveBlock(CompiledRig rig, Travel? travel)
    {
        this.travel = travel;
        crowd = rig.NewCrowd(RigCrowd.Widest);
        times = new float[crowd.Count];
        moments = new LiveMoment[crowd.Count];
        changed = new Buffers(new BufferSizes { Channels = 1 }, crowd.Count);
    }

    public int Count { get; private set; }

    public bool IsFull => Count == crowd.Count;

    public LiveMoment this[int moment] => moments[moment];

    public void Clear() => Count = 0;

    /// <summary>Adds a moment, by its time in the clip.</summary>
    public void Add(float time) => times[Count++] = time;

    /// <summary>Evaluates all of them. Who has no moment stands where the last one does, so that what is true of all moments is true of all rigs.</summary>
    public void Evaluate(ClipPlayer player)
    {
        times.AsSpan(Count).Fill(times[Count - 1]);
        player.Pose(crowd.Members, times);
        crowd.Evaluate();
        for (var moment = 0; moment < moments.Length; moment++)
            moments[moment] = new LiveMoment(crowd[moment], travel);
    }

    /// <summary>A joint's channels at all moments; good until the next joint is asked for.</summary>
    public JointChannels Channels(int joint)
    {
        if (travel is null || !travel.Changes(joint))
            return crowd.Channels(joint, block: 0);
        foreach (var (moment, lane) in moments.Zip(changed.Lanes))
        {
            var (t, r, s) = moment.Channels(joint);
            (lane.Moves[0], lane.Turns[0], lane.Scales[0]) = (t.ToSingle(), r.ToSingle(), s.ToSingle());
        }

        return new(changed, 0);
    }

    /// <summary>The first moment at which a joint's channels are no finite numbers.</summary>
    public int FirstNotFinite(int joint)
    {
        var moment = 0;
        while (moment + 1 < Count && IsFinite(moments[moment].Channels(joint)))
            moment++;
        return moment;
    }

    private static bool IsFinite(Trs channels) =>
        float.IsFinite(channels.Translation.ToSingle().LengthSquared() + channels.Scale.ToSingle().LengthSquared())
        && channels.Rotation.ToSingle().LengthSquared() is > 0 and < float.PositiveInfinity;
}
