// SPDX-License-Identifier: GPL-3.0-or-later
// Potential acoustic gain. G. Ballou (ed.), Handbook for Sound Engineers, 4th ed. 2008, equations 34-5 and 34-8,
// example of page 1252 without the room; rows without a source are our own examples of the same equation. NOM: 20 log10
// N in phase, 10 log10 N at random.
#include <cmath>
#include <random>

#include "core/loop/eigenvalues.h"
#include "core/loop/stability.h"
#include "core/units/level.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
constexpr double kFoot = 0.3048;
struct Example {
    double talker_to_microphone, talker_to_listener, microphone_to_loudspeaker, loudspeaker_to_listener;  // m
    int open_microphones;
    double gain_db;  // PAG, 6 dB of stability margin taken off
};
const std::vector<Example> kExamples = {{2 * kFoot, 128 * kFoot, 45 * kFoot, 90 * kFoot, 3, 19.3318},
                                        {0.3, 8.0, 2.0, 2.0, 1, 22.5194},
                                        {0.05, 8.0, 2.0, 2.0, 1, 38.0824},
                                        {0.3, 10.0, 4.0, 8.0, 1, 18.437},
                                        {0.3, 10.0, 4.0, 8.0, 4, 12.4164},
                                        {0.1, 6.0, 1.5, 1.5, 2, 26.5527}};

/// The listener's gain at the edge of ringing: send so that the loop stands at `margin`, then what the loudspeaker
/// gives the listener over what the talker gives her without it.
double acoustic_gain_db(const Example& e, double margin_at_0_db) {
    // A send of 94 dB for a source of 94 dB at the microphone: unity from microphone to 1 m. Talker at Ds: 1/Ds at the
    // microphone.
    return margin_at_0_db - 20.0 * std::log10(e.talker_to_microphone) - 20.0 * std::log10(e.loudspeaker_to_listener) +
           20.0 * std::log10(e.talker_to_listener);
}
}  // namespace

class GainBeforeFeedback : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void potential_acoustic_gain_comes_out_of_the_worst_phase_margin() {
        for (const Example& e : kExamples) {
            Show show = plain_stage(1, 1);
            show.inputs[0].position = {0.0, 2.0, 2.0};
            show.loudspeakers[0].position = {0.0, 2.0 + e.microphone_to_loudspeaker, 2.0};
            send(show, 0, 0, 94.0);
            const Stability stability = stability_of(show, false);
            const double pag =
                acoustic_gain_db(e, *stability.worst_phase_margin_db) - 6.0 - 10.0 * std::log10(e.open_microphones);
            // The air takes a little of the loop: the margin is found at 20 Hz, where it is next to nothing.
            QVERIFY2(std::abs(pag - e.gain_db) < 0.01, qPrintable(QString::number(pag)));
            QVERIFY(*stability.margin_db >= *stability.worst_phase_margin_db - 1e-9);
        }
    }
    void equal_microphones_on_one_mix_cost_20_log_n_in_phase() {
        const auto margin = [](int microphones) {
            Show show = plain_stage(microphones, 1);
            show.loudspeakers[0].position = {0.0, 3.0, 2.0};
            for (int i = 0; i < microphones; ++i) {
                const double angle = 2.0 * kPi * i / microphones;  // on a circle around the loudspeaker
                show.inputs[static_cast<std::size_t>(i)].position = {1.5 * std::cos(angle), 3.0 + 1.5 * std::sin(angle),
                                                                     2.0};
                send(show, i, 0, 94.0);
            }
            return *stability_of(show, false).worst_phase_margin_db;
        };
        for (const int n : {2, 3, 4, 8}) QVERIFY(std::abs(margin(1) - margin(n) - 20.0 * std::log10(n)) < 1e-3);
    }
    void the_power_mean_over_random_phases_costs_10_log_n() {
        std::mt19937_64 random(7);
        std::uniform_real_distribution<double> phase(0.0, 2.0 * kPi);
        for (const int n : {2, 4, 8}) {
            double power = 0.0;
            constexpr int draws = 20000;
            for (int i = 0; i < draws; ++i) {
                // n microphones, one loudspeaker: a matrix of rank one, its eigenvalue the sum of the n loops.
                Eigen::MatrixXcd loops(n, n);
                for (int c = 0; c < n; ++c) loops.row(c).setConstant(0.1 * std::polar(1.0, phase(random)));
                double largest = 0.0;
                for (const Complex value : eigenvalues_of(loops)) largest = std::max(largest, std::norm(value));
                power += largest;
            }
            const double change = energy_to_db(power / draws / 0.01);
            QVERIFY(std::abs(change - 10.0 * std::log10(n)) < 0.15);
        }
    }
};
HOWLMAP_TEST(GainBeforeFeedback)
#include "test_gain_before_feedback.moc"
