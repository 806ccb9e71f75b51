using System.Diagnostics;
using System.Text;

namespace FrameOpt.Tests.Architecture;

/// <summary>The guards see what they guard against: a type used once, in any place code can stand.</summary>
public class CallGraphTests
{
    [Theory]
    [InlineData(typeof(Stopwatch), "a static call")]
    [InlineData(typeof(StringBuilder), "a closure")]
    [InlineData(typeof(Version), "an iterator")]
    [InlineData(typeof(UriBuilder), "an async method")]
    [InlineData(typeof(Guid), "a type argument")]
    [InlineData(typeof(FormatException), "a catch")]
    [InlineData(typeof(Half), "typeof")]
    [InlineData(typeof(Lazy<>), "a cast")]
    [InlineData(typeof(TimeOnly), "an array element")]
    [InlineData(typeof(ObsoleteAttribute), "an attribute")]
    [InlineData(typeof(ICloneable), "an interface")]
    [InlineData(typeof(Math), "a call after a switch of many cases")]
    public void A_use_is_seen_in(Type used, string place)
    {
        var uses = typeof(Sample).GetNestedTypes(Touched.Declared).Append(typeof(Sample)).SelectMany(CallGraph.Of);
        Assert.True(uses.Any(use => use.Used == used), $"{used.Name} is not seen in {place}");
    }

    /// <summary>Never run, only read. Its types nest in the test class, so that their outermost type is the test.</summary>
    private abstract class Sample : ICloneable
    {
        public abstract object Clone();

        public static long Call() => Stopwatch.GetTimestamp();

        public static Func<string> Closure(int number) => () => new StringBuilder().Append(number).ToString();

        public static IEnumerable<int> Iterator()
        {
            yield return new Version(1, 0).Major;
        }

        public static async Task<string> Wait()
        {
            await Task.Yield();
            return new UriBuilder().Host;
        }

        public static int TypeArgument() => Array.Empty<Guid>().Length;

        public static object Elements() => new TimeOnly[3];

        public static object Cast(object value) => value is Lazy<int> ? value : typeof(Half);

        [Obsolete("read, not called")]
        public static int Catch(string text)
        {
            try
            {
                return text.Length;
            }
            catch (FormatException)
            {
                return 0;
            }
        }

        public static double Switch(int way, double value) => way switch
        {
            0 => 1.5,
            1 => value,
            2 => 1e300,
            3 => way * 1000L,
            4 => -value,
            _ => Math.Cbrt(value),
        };
    }
}
