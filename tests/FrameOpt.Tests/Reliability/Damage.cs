using System.Text;
using CsCheck;

namespace FrameOpt.Tests.Reliability;

/// <summary>A good file and what was done to it.</summary>
/// <param name="Seed">Index of the good file.</param>
/// <param name="Edits">In order.</param>
internal sealed record Damage(int Seed, IReadOnlyList<Edit> Edits)
{
    /// <summary>One to five edits of one of so many good files.</summary>
    public static Gen<Damage> Of(int seeds) => Gen.Select(Gen.Int[0, seeds - 1], Gen.Select(Gen.UInt, Gen.UInt, Gen.UInt).Array[1, 5],
        (seed, edits) => new Damage(seed, [.. edits.Select(edit => new Edit(edit.Item1, edit.Item2, edit.Item3))]));

    /// <summary>A number that picks the same cases for the costlier checks in every run of the same cases.</summary>
    public uint Lot => Edits.Aggregate(17u, (sum, edit) => sum * 31 + edit.Kind + edit.At * 7 + edit.With);

    /// <summary>The damaged file.</summary>
    public byte[] Apply(byte[] good) =>
        Encoding.Latin1.GetBytes(Edits.Aggregate(Encoding.Latin1.GetString(good), (text, edit) => edit.Apply(text)));

    /// <summary>The same with one edit less, each way.</summary>
    public IEnumerable<Damage> Smaller() => Enumerable.Range(0, Edits.Count)
        .Select(less => this with { Edits = [.. Edits.Where((_, i) => i != less)] });
}
