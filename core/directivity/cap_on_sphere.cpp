// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/directivity/cap_on_sphere.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {
/// Legendre polynomials P_0(x), P_1(x), .. one after another.
class Legendre {
  public:
    explicit Legendre(double x) : x_(x) {}
    double value() const { return now_; }
    void next() {
        const double after = ((2.0 * n_ + 1.0) * x_ * now_ - n_ * before_) / (n_ + 1.0);
        before_ = now_;
        now_ = after;
        n_ += 1.0;
    }

  private:
    double x_, n_ = 0.0, before_ = 0.0, now_ = 1.0;
};

/// Spherical Hankel functions of the second kind, h_0, h_1, .. by upward recurrence: stable, because the part that
/// grows (y_n) is the part that counts where the other (j_n) loses its digits.
class Hankel {
  public:
    explicit Hankel(double x) : x_(x) {
        const Complex turn = std::polar(1.0, -x);
        now_ = Complex(0.0, 1.0) * turn / x;
        next_ = (Complex(0.0, 1.0) / (x * x) - 1.0 / x) * turn;
    }
    /// Derivative by the argument: h_n' = n/x h_n - h_(n+1).
    Complex derivative() const { return n_ / x_ * now_ - next_; }
    void next() {
        const Complex after = (2.0 * n_ + 3.0) / x_ * next_ - now_;
        now_ = next_;
        next_ = after;
        n_ += 1.0;
    }

  private:
    double x_, n_ = 0.0;
    Complex now_, next_;
};
}  // namespace

CapSlice::CapSlice(const CapOnSphere& cap, double wave_number) {
    const double sine = std::min(1.0, cap.cap_radius_m / cap.sphere_radius_m);
    const double edge = std::sqrt((1.0 - sine) * (1.0 + sine));  // cosine of the cap's half-angle, 0..90 deg
    const double ka = wave_number * cap.sphere_radius_m;
    static constexpr Complex powers_of_j[4] = {{1.0, 0.0}, {0.0, 1.0}, {-1.0, 0.0}, {0.0, -1.0}};
    Hankel hankel(ka);
    Legendre polynomial(edge);
    double below = 1.0, here = 1.0;  // P_(n-1) and P_n at the edge, with P_(-1) = 1
    Complex axis = 0.0;
    double largest = 0.0, size = 1.0;
    // Beyond n = ka the terms die faster than geometrically; the factor of the edge stays below 1.
    for (std::size_t n = 0; static_cast<double>(n) <= ka + 3.0 || size > 1e-17 * largest; ++n) {
        polynomial.next();
        const double above = polynomial.value();  // P_(n+1)
        const Complex radiated = powers_of_j[n % 4] / hankel.derivative();
        terms_.push_back(0.5 * (below - above) * radiated);
        axis += terms_.back();
        size = std::abs(radiated);
        largest = std::max(largest, size);
        below = here;
        here = above;
        hankel.next();
    }
    size_on_axis_ = std::abs(axis);
    for (Complex& term : terms_) term /= axis;
}

Complex CapSlice::field(double cosine) const {
    Legendre polynomial(cosine);
    Complex sum = 0.0;
    for (const Complex& term : terms_) {
        sum += term * polynomial.value();
        polynomial.next();
    }
    return sum;
}

double CapSlice::gain(double cosine) const { return std::min(1.0, std::abs(field(cosine))); }

}  // namespace howlmap
