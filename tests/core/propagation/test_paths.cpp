// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/propagation/diffuse_field.h"
#include "core/propagation/reflection.h"
#include "core/propagation/transfer.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
bool has(const std::vector<Path>& paths, Via via) {
    for (const Path& path : paths)
        if (path.via == via) return true;
    return false;
}
const Path& of(const std::vector<Path>& paths, Via via) {
    for (const Path& path : paths)
        if (path.via == via) return path;
    throw std::logic_error("no such path");
}
Surfaces six_walls() {
    Surfaces surfaces;
    surfaces.back = Surface{6.0, 0.2, {}};
    surfaces.front = Surface{-1.0, 0.2, {}};
    surfaces.left = Surface{5.0, 0.2, {}};
    surfaces.right = Surface{-5.0, 0.2, {}};
    surfaces.ceiling = Surface{4.0, 0.2, {}};
    return surfaces;
}
}  // namespace

class Paths : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void lengths_and_directions_of_images() {
        const Vec3 source{1.0, 2.0, 0.5}, receiver{-2.0, 3.0, 1.5};
        const auto paths = paths_between(source, receiver, planes_of(six_walls()));
        QCOMPARE(paths.size(), std::size_t{7});
        QVERIFY(std::abs(of(paths, Via::direct).distance_m - std::sqrt(9.0 + 1.0 + 1.0)) < 1e-12);
        QVERIFY(std::abs(of(paths, Via::floor).distance_m - std::sqrt(9.0 + 1.0 + 4.0)) < 1e-12);
        QVERIFY(std::abs(of(paths, Via::back).distance_m - std::sqrt(9.0 + 49.0 + 1.0)) < 1e-12);
        QVERIFY(std::abs(of(paths, Via::left).distance_m - std::sqrt(121.0 + 1.0 + 1.0)) < 1e-12);
        QVERIFY(std::abs(of(paths, Via::ceiling).distance_m - std::sqrt(9.0 + 1.0 + 36.0)) < 1e-12);
        // Leaves towards the mirrored receiver, arrives from the mirrored loudspeaker.
        const Path& floor = of(paths, Via::floor);
        QVERIFY(floor.leaving.z < 0.0 && floor.arriving.z < 0.0);
        QVERIFY(std::abs(floor.leaving.z * floor.distance_m + 2.0) < 1e-12);
        const Path& ceiling = of(paths, Via::ceiling);
        QVERIFY(ceiling.leaving.z > 0.0 && ceiling.arriving.z > 0.0);
    }
    void a_point_on_or_behind_a_plane_loses_that_image_only() {
        const Planes planes = planes_of(six_walls());
        const auto on_the_wall = paths_between({1.0, 6.0, 1.0}, {0.0, 2.0, 1.0}, planes);
        QVERIFY(!has(on_the_wall, Via::back) && has(on_the_wall, Via::front) && has(on_the_wall, Via::direct));
        const auto behind = paths_between({0.0, 2.0, 1.0}, {0.0, 7.0, 1.0}, planes);
        QVERIFY(!has(behind, Via::back));
        const auto on_the_floor = paths_between({0.0, 2.0, 0.0}, {0.0, 3.0, 1.0}, planes);
        QVERIFY(!has(on_the_floor, Via::floor) && has(on_the_floor, Via::ceiling));
        QVERIFY(!has(paths_between({5.5, 2, 1}, {0, 3, 1}, planes), Via::left));
        QVERIFY(!has(paths_between({0, 2, 1}, {-5.0, 3, 1}, planes), Via::right));
        QVERIFY(!has(paths_between({0, -1.0, 1}, {0, 3, 1}, planes), Via::front));
        QVERIFY(!has(paths_between({0, 1, 4.5}, {0, 3, 1}, planes), Via::ceiling));
    }
    void the_floor_of_two_on_a_riser_is_the_riser() {
        Stage stage;
        stage.risers.push_back({"a", "", {{-1, 1}, {1, 1}, {1, 3}, {-1, 3}}, 0.4, {}});
        stage.risers.push_back({"b", "", {{-1, 1}, {0, 1}, {0, 3}, {-1, 3}}, 0.6, {}});
        const auto floor = [&](Vec3 a, Vec3 b) {
            return *planes_between(stage, a, b)[static_cast<std::size_t>(Via::floor)];
        };
        QCOMPARE(floor({0.5, 2, 1}, {0.7, 2, 1}), 0.4);
        QCOMPARE(floor({-0.5, 2, 1}, {0.7, 2, 1}), 0.4);   // only the lower one holds both
        QCOMPARE(floor({-0.5, 2, 1}, {-0.7, 2, 1}), 0.6);  // the highest counts
        QCOMPARE(floor({0.5, 2, 1}, {0.7, 4, 1}), 0.0);
        QCOMPARE(floor({1.0, 1.0, 1}, {0.7, 2, 1}), 0.4);  // on the outline
    }
    void short_distances_are_held() {
        const Path path = direct_path({0, 0, 1}, {0, 0.01, 1});
        QCOMPARE(path.distance_m, 0.01);
        QCOMPARE(path.held_m, 0.05);
        const Path none = direct_path({1, 2, 3}, {1, 2, 3});
        QCOMPARE(none.held_m, 0.05);
        QCOMPARE(length(none.leaving), 0.0);
    }
    void coinciding_points_count_as_on_axis() {
        Show show = howlmap::test::plain_stage(1, 1);
        std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::figure_8;
        show.loudspeakers[0].directivity = Coverage{40.0, 40.0, 5.0, 5.0, 24.0, {}};
        show.loudspeakers[0].position = show.inputs[0].position;
        const Receiver receiver = receiver_of(show.inputs[0]);
        const Emitter emitter = emitter_of(show.loudspeakers[0]);
        const auto legs = legs_between(emitter, receiver, Planes{});
        const Surroundings around(show.air, show.stage.surfaces);
        const Complex h = transfer(legs, LoudspeakerSlice(*emitter.directivity, 1000.0, around.speed), receiver.pattern,
                                   {around, 1000.0});
        QVERIFY(std::abs(std::abs(h) - 20.0) < 0.01);
        QVERIFY(std::abs(std::arg(h) + 2.0 * kPi * 1000.0 * 0.05 / 343.2) < 1e-9);
    }
    void reflection_is_linear_in_absorption_over_octaves() {
        const Absorption octaves = std::map<int, double>{{1, 0.1}, {2, 0.3}};  // 125 and 250 Hz
        QVERIFY(std::abs(absorption_at(octaves, 125.893) - 0.1) < 1e-5);
        QVERIFY(std::abs(absorption_at(octaves, std::sqrt(125.893 * 251.189)) - 0.2) < 1e-5);
        QCOMPARE(absorption_at(octaves, 20.0), 0.1);
        QCOMPARE(absorption_at(octaves, 20000.0), 0.3);
        QVERIFY(std::abs(reflection_factor(0.19, 500.0) - 0.9) < 1e-12);
        QCOMPARE(reflection_factor(1.0, 500.0), 0.0);
    }
    void diffuse_field_of_hopkins_and_stryker() {
        // Critical distance 0.141 sqrt(Q A): there the direct 1/r^2 equals 16 pi / (Q A) (F. A. Everest as above; L.
        // Beranek 1954).
        const Room room{500.0, 0.8, {}};
        const double a = 0.161 * 500.0 / 0.8, q = 5.0, distance = 0.141 * std::sqrt(q * a);
        QVERIFY(std::abs(diffuse_mean_square(room, q) * distance * distance - 1.0) < 2e-3);
    }
};
HOWLMAP_TEST(Paths)
#include "test_paths.moc"
