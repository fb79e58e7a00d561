using System.Numerics;

namespace Condyle.Runtime;

/// <summary>Slopes of keys: how fast a value changes there. A track with a slope is a cubic spline, as the specification of glTF 2.0 defines it in appendix C.</summary>
public sealed partial class Clip
{
    /// <summary>Says how fast a control moves at one of its keys, which makes the track of its moves a spline.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">The time of a key that was added already.</param>
    /// <param name="x">Metres a second along the X axis of the control's placement.</param>
    /// <param name="y">Metres a second along its Y axis.</param>
    /// <param name="z">Metres a second along its Z axis.</param>
    /// <param name="side">Whether it is so before the key, after it, or both.</param>
    /// <returns>The clip.</returns>
    public Clip MoveSlope(string control, float at, float x = 0, float y = 0, float z = 0, KeySide side = KeySide.Both) =>
        Slope(moves.GetValueOrDefault(control), control, at, _ => new Vector3(x, y, z), AreFinite(x, y, z), Used(Channels.MoveX, x, y, z, atRest: 0), side);

    /// <summary>Says how fast a control turns at one of its keys, which makes the track of its turns a spline.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">The time of a key that was added already.</param>
    /// <param name="x">Degrees a second about the X axis of the control as it is turned then.</param>
    /// <param name="y">Degrees a second about its Y axis.</param>
    /// <param name="z">Degrees a second about its Z axis.</param>
    /// <param name="side">Whether it is so before the key, after it, or both.</param>
    /// <returns>The clip.</returns>
    public Clip TurnSlope(string control, float at, float x = 0, float y = 0, float z = 0, KeySide side = KeySide.Both)
    {
        var half = new Vector3(x, y, z) * (MathF.PI / 360);
        return Slope(turns.GetValueOrDefault(control), control, at, turn => turn * new Quaternion(half, 0), AreFinite(x, y, z), Used(Channels.TurnX, x, y, z, atRest: 0), side);
    }

    /// <summary>Says how fast a control's scale changes at one of its keys, which makes the track of its scales a spline.</summary>
    /// <param name="control">The control's name.</param>
    /// <param name="at">The time of a key that was added already.</param>
    /// <param name="x">Change of the factor along the X axis, a second.</param>
    /// <param name="y">Change of the factor along the Y axis, a second.</param>
    /// <param name="z">Change of the factor along the Z axis, a second.</param>
    /// <param name="side">Whether it is so before the key, after it, or both.</param>
    /// <returns>The clip.</returns>
    public Clip ScaleSlope(string control, float at, float x = 0, float y = 0, float z = 0, KeySide side = KeySide.Both) =>
        Slope(scales.GetValueOrDefault(control), control, at, _ => new Vector3(x, y, z), AreFinite(x, y, z), Used(Channels.ScaleX, x, y, z, atRest: 0), side);

    /// <summary>Says how fast a switch changes at one of its keys, which makes its track a spline. What goes beyond 0 or 1 between keys is taken as 0 or 1.</summary>
    /// <param name="name">The switch, for instance <c>hand_left.fk</c>.</param>
    /// <param name="at">The time of a key that was added already.</param>
    /// <param name="perSecond">Change of the value, a second.</param>
    /// <param name="side">Whether it is so before the key, after it, or both.</param>
    /// <returns>The clip.</returns>
    public Clip SwitchSlope(string name, float at, float perSecond, KeySide side = KeySide.Both) =>
        Slope(switches.GetValueOrDefault(name), name, at, _ => perSecond, float.IsFinite(perSecond), Channels.None, side);

    /// <summary>Says how fast a dial changes at one of its keys, which makes its track a spline. What goes out of its range between keys is taken as the nearest inside.</summary>
    /// <param name="name">The dial, for instance <c>hand_left.curl</c>.</param>
    /// <param name="at">The time of a key that was added already.</param>
    /// <param name="perSecond">Change of the value, a second.</param>
    /// <param name="side">Whether it is so before the key, after it, or both.</param>
    /// <returns>The clip.</returns>
    public Clip DialSlope(string name, float at, float perSecond, KeySide side = KeySide.Both) =>
        Slope(dials.GetValueOrDefault(name), name, at, _ => perSecond, float.IsFinite(perSecond), Channels.None, side);

    private Clip Slope<T>(CurveTrack<T>? track, string target, float at, Func<T, T> slopeAt, bool isFinite, Channels used, KeySide side)
        where T : struct
    {
        CheckTarget(target, at);
        if (!isFinite)
            throw Wrong("has a slope that is no finite number", "Give a finite number", target, at);
        if (track is null || !track.TrySlope(at, slopeAt, side))
            throw Wrong("has a slope but no key", "Add the key first", target, at);
        track.Use(used, at);
        return this;
    }
}
