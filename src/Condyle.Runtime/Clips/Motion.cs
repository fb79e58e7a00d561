namespace Condyle.Runtime;

/// <summary>A value over time.</summary>
internal abstract class Motion<T>
    where T : struct
{
    /// <param name="time">Seconds; any finite number.</param>
    public abstract T At(float time);
}
