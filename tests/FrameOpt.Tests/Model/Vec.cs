using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Model;

/// <summary>A plain vector in the computation axes: x forward, y right, z down.</summary>
public readonly record struct Vec(double X, double Y, double Z)
{
    public double Magnitude => Math.Sqrt(X * X + Y * Y + Z * Z);

    public static Vec operator +(Vec a, Vec b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vec operator -(Vec a) => -1 * a;

    public static Vec operator -(Vec a, Vec b) => a + -b;

    public static Vec operator *(double k, Vec a) => new(k * a.X, k * a.Y, k * a.Z);

    public static double Dot(Vec a, Vec b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    public static Vec Cross(Vec a, Vec b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    /// <summary>Turned about the x axis by the right-hand rule: right side down.</summary>
    public Vec AboutX(double angle) => Times(
        [[1, 0, 0], [0, Math.Cos(angle), -Math.Sin(angle)], [0, Math.Sin(angle), Math.Cos(angle)]]);

    /// <summary>Turned about the y axis by the right-hand rule: nose up.</summary>
    public Vec AboutY(double angle) => Times(
        [[Math.Cos(angle), 0, Math.Sin(angle)], [0, 1, 0], [-Math.Sin(angle), 0, Math.Cos(angle)]]);

    /// <summary>Turned about the z axis by the right-hand rule: nose right.</summary>
    public Vec AboutZ(double angle) => Times(
        [[Math.Cos(angle), -Math.Sin(angle), 0], [Math.Sin(angle), Math.Cos(angle), 0], [0, 0, 1]]);

    private Vec Times(double[][] matrix)
    {
        var self = this;
        double Row(int i) => matrix[i][0] * self.X + matrix[i][1] * self.Y + matrix[i][2] * self.Z;
        return new Vec(Row(0), Row(1), Row(2));
    }
}
