// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAbstractSlider>
#include <QAction>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QThread>
#include <algorithm>
#include <span>

#include "app/document/document.h"
#include "app/lesson/comb_view.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/lesson_window.h"
#include "app/lesson/phasor_view.h"
#include "app/lesson/player.h"
#include "app/lesson/side_view.h"
#include "app/lesson/sound_feed.h"
#include "app/lesson/wave_clock.h"
#include "app/settings/preferences.h"
#include "core/loop/stability.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestLessonWindow : public QObject {
    Q_OBJECT
    Document document_;
    template <class T>
    static T* part(LessonWindow& window, const char* name) {
        return window.findChild<T*>(QString::fromLatin1(name));
    }

  private Q_SLOTS:
    void init() {
        settings()->remove(QStringLiteral("lesson/motion"));
        Show show = plain_bench().show;
        show.inputs[0].name = "voice";
        document_.replace(show, {}, false);
    }

    void knobs_and_bench_follow_each_other() {
        LessonWindow window(document_, {}, nullptr);
        for (int k = 0; k < kKnobs; ++k) {
            const auto knob = static_cast<Knob>(k);
            const KnobRange& range = range_of(knob);
            window.state().set_bench(plain_bench());
            if (knob == Knob::covered) window.state().turn(Knob::body, 1);
            if (auto* box = part<QDoubleSpinBox>(window, range.key)) {
                QVERIFY(!box->accessibleName().isEmpty());
                box->setValue(range.least);
                QVERIFY(std::abs(window.state().value(knob) - range.least) < 1e-6);
                window.state().turn(knob, range.most);
                QVERIFY(std::abs(std::abs(box->value()) - range.most) < 1e-6);
            } else if (knob != Knob::pattern) {
                auto* button = part<QAbstractButton>(window, range.key);
                QVERIFY2(button, range.key);
                const bool was = button->isChecked();
                button->click();
                QCOMPARE(window.state().value(knob) > 0.5, !was);
            }
        }
        auto* pattern = part<QComboBox>(window, "pattern");
        pattern->setCurrentIndex(5);
        QCOMPARE(window.state().value(Knob::pattern), window.state().value(Knob::body) > 0.5 ? 0.0 : 5.0);
    }

    void the_microphone_is_dragged() {
        LessonWindow window(document_, {}, nullptr);
        window.show();
        auto* side = window.findChild<SideView*>();
        LessonState& state = window.state();
        const Bench before = state.bench();
        const auto at = [&](double x, double z) { return side->to_pixel({x, z}).toPoint(); };
        const QPoint from = at(state.value(Knob::distance), state.value(Knob::height)), to = at(2.0, 1.0);
        QVERIFY(side->rect().contains(from) && side->rect().contains(to));
        QTest::mousePress(side, Qt::LeftButton, {}, from);
        QTest::mouseMove(side, (from + to) / 2);
        QTest::mouseMove(side, to);
        QTest::mouseRelease(side, Qt::LeftButton, {}, to);
        QVERIFY(std::abs(state.value(Knob::distance) - 2.0) < 0.02);
        QVERIFY(std::abs(state.value(Knob::height) - 1.0) < 0.02);
        // The sentence is about the whole drag, from where it began.
        const QString first = QStringLiteral("%1 m").arg(figures_of(before).distance_m, 0, 'f', 2);
        QVERIFY2(state.sentence().contains(first), qPrintable(state.sentence()));
        QVERIFY(state.sentence().contains(QStringLiteral("%1 m").arg(state.figures().distance_m, 0, 'f', 2)));
        // A drag that begins on the page moves nothing.
        const Bench rest = state.bench();
        QTest::mousePress(side, Qt::LeftButton, {}, QPoint(5, 5));
        QTest::mouseMove(side, to);
        QTest::mouseRelease(side, Qt::LeftButton, {}, to);
        QVERIFY(state.bench() == rest);
    }

    void angles_gain_latency_and_polarity_by_mouse() {
        LessonWindow window(document_, {}, nullptr);
        window.resize(1280, 800);
        window.show();
        auto* side = window.findChild<SideView*>();
        LessonState& state = window.state();
        state.turn(Knob::aim, 0.0), state.turn(Knob::tilt, 0.0);
        const auto drag = [&](QPointF from, QPointF to) {
            QTest::mousePress(side, Qt::LeftButton, {}, from.toPoint());
            QTest::mouseMove(side, to.toPoint());
            QTest::mouseRelease(side, Qt::LeftButton, {}, to.toPoint());
        };
        const QPointF mic = side->to_pixel({state.value(Knob::distance), state.value(Knob::height)});
        const QPointF box = side->to_pixel({0, state.value(Knob::speaker_height)});
        const double metre = side->to_pixel({1, 0}).x() - side->to_pixel({0, 0}).x();
        const double far = std::max(0.42 * metre, 52.0);
        drag(mic + QPointF(far, 0), mic + QPointF(far, far));  // its tail down: it looks up
        QVERIFY2(std::abs(state.value(Knob::aim) - 45.0) < 2.0, qPrintable(QString::number(state.value(Knob::aim))));
        drag(box - QPointF(far, 0), box + QPointF(-far, far));
        QVERIFY2(std::abs(state.value(Knob::tilt) - 45.0) < 2.0, qPrintable(QString::number(state.value(Knob::tilt))));
        // Level, latency and polarity stand one below the other at the upper right.
        const QPointF level(side->width() - 60, 24),
            latency = level + QPointF(0, QFontMetricsF(side->font()).height() + 12);
        const double was = state.value(Knob::level), late = state.value(Knob::latency);
        drag(level, level - QPointF(50, 0));
        QVERIFY2(std::abs(state.value(Knob::level) - (was - 5.0)) < 0.2,
                 qPrintable(QString::number(state.value(Knob::level))));
        drag(latency, latency + QPointF(50, 0));
        QVERIFY2(std::abs(state.value(Knob::latency) - (late + 1.0)) < 0.1,
                 qPrintable(QString::number(state.value(Knob::latency))));
        const QPointF polarity = latency + (latency - level);
        QTest::mouseClick(side, Qt::LeftButton, {}, polarity.toPoint());
        QCOMPARE(state.value(Knob::polarity), 1.0);
        QTest::mouseClick(side, Qt::LeftButton, {}, polarity.toPoint());
        QCOMPARE(state.value(Knob::polarity), 0.0);
    }

    void keyboard_for_everything() {
        LessonWindow window(document_, {}, nullptr);
        LessonState& state = window.state();
        auto* side = window.findChild<SideView*>();
        QTest::keyClick(side, Qt::Key_Right);
        QVERIFY(std::abs(state.value(Knob::distance) - 1.21) < 1e-9);
        QTest::keyClick(side, Qt::Key_Up, Qt::ShiftModifier);
        QVERIFY(std::abs(state.value(Knob::height) - 1.5) < 1e-9);
        const double aim = state.value(Knob::aim);
        QTest::keyClick(side, Qt::Key_BracketLeft);
        QVERIFY(std::abs(state.value(Knob::aim) - (aim - 1.0)) < 1e-6);
        auto* comb = window.findChild<CombView*>();
        QTest::keyClick(comb, Qt::Key_Up);
        QVERIFY(std::ranges::any_of(state.figures().comb,
                                    [&](const Fit& fit) { return std::abs(fit.hz - state.bench().hz) < 0.02; }));
        QVERIFY(state.figures().misfit < 0.001);
        const double hz = state.bench().hz;
        QTest::keyClick(comb, Qt::Key_Right);
        QVERIFY(std::abs(state.bench().hz / hz - std::pow(2.0, 1.0 / 12.0)) < 1e-9);
        QSet<QString> taken;
        for (const QAction* action : window.actions()) {
            const QString keys = action->shortcut().toString();
            QVERIFY2(!keys.isEmpty() && !taken.contains(keys), qPrintable(keys));
            taken.insert(keys);
            QVERIFY(!action->toolTip().isEmpty() && !action->statusTip().isEmpty());
        }
        for (const char* keys : {"P", "F", "B", "C", "I", "Space", "F11", "Esc", "F1", "PgDown", "PgUp"})
            QVERIFY2(taken.contains(QString::fromLatin1(keys)), keys);
        for (QAction* action : window.actions())
            if (action->shortcut() == QKeySequence(Qt::Key_P)) action->trigger();
        QCOMPARE(state.value(Knob::polarity), 1.0);
    }

    void a_click_on_the_comb_looks_at_the_nearest_tooth() {
        LessonWindow window(document_, {}, nullptr);
        window.show();
        auto* comb = window.findChild<CombView*>();
        const Fit fit = window.state().figures().comb[2];
        QVERIFY(std::abs(comb->hz_at(comb->x_of(440.0)) - 440.0) < 1e-6);
        QTest::mouseClick(comb, Qt::LeftButton, {},
                          QPoint(static_cast<int>(comb->x_of(fit.hz)) + 2, comb->height() / 2));
        QVERIFY(std::abs(window.state().bench().hz - fit.hz) < 0.001);
    }

    void figures_shown_are_those_of_the_analysis() {
        LessonWindow window(document_, {}, nullptr);
        const Stability stability = stability_of(window.state().bench().show, false);
        QVERIFY(part<QLabel>(window, "margin")->text().contains(QString::number(*stability.margin_db, 'f', 1)));
    }

    void every_part_has_a_name() {
        LessonWindow window(document_, {}, nullptr);
        for (const QWidget* widget : window.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || widget->objectName().startsWith(u"qt_")) continue;
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            if (!widget->inherits("SideView") && !button && !widget->objectName().isEmpty() &&
                !widget->inherits("QLabel"))
                QVERIFY2(!widget->accessibleName().isEmpty(), qPrintable(widget->objectName()));
            if (button) QVERIFY(!button->text().isEmpty());
        }
    }

    void crests_travel_and_stand_still() {
        WaveClock clock;
        clock.set_wavelength(0.5);
        clock.advance(0.1);
        QVERIFY(std::abs(clock.turns() - 0.1) < 1e-9);  // half a metre a second
        clock.set_wavelength(0.05);
        clock.advance(0.1);
        QVERIFY(std::abs(clock.turns() - 0.2) < 1e-9);  // not more than one a second
        LessonWindow window(document_, {}, nullptr);
        window.show();
        QVERIFY(window.clock().running());
        const auto picture = [&] { return window.findChild<SideView*>()->grab().toImage(); };
        part<QPushButton>(window, "pause")->click();
        QVERIFY(!window.clock().running());
        const QImage before = picture();
        QCOMPARE(picture(), before);
        window.clock().advance(0.1);
        QVERIFY(picture() != before);
        LessonWindow next(document_, {}, nullptr);  // it is remembered
        next.show();
        QVERIFY(!next.clock().running());
        part<QPushButton>(next, "pause")->click();
        QVERIFY(next.clock().running());
        next.hide();
        QVERIFY(!next.clock().running());
    }

    void a_pair_comes_and_goes_back_as_one_step() {
        LessonWindow window(document_, {}, nullptr);
        auto* back = part<QPushButton>(window, "put_back");
        QVERIFY(back->isHidden());
        QVERIFY(window.show_pair("microphone", "loudspeaker"));
        QVERIFY(!back->isHidden() && !back->isEnabled());
        const Show before = document_.show();
        window.state().turn(Knob::distance, 2.0);
        window.state().turn(Knob::polarity, 1.0);
        QVERIFY(back->isEnabled());
        back->click();
        QCOMPARE(document_.undo_stack().count(), 1);
        QCOMPARE(document_.show().inputs[0].position.y, 2.0);
        QCOMPARE(document_.show().inputs[0].polarity, Polarity::inverted);
        QVERIFY(!back->isEnabled());
        document_.undo();
        QVERIFY(document_.show() == before);
        QSignalSpy said(&window, &LessonWindow::said);
        QVERIFY(!window.show_pair("nobody", "loudspeaker"));
        QCOMPARE(said.count(), 1);
        window.state().choose(0);  // a guided lesson is nothing of the show
        QVERIFY(back->isHidden());
    }

    void a_show_in_feet_has_its_bench_in_feet() {
        Show show = document_.show();
        show.display.units = Units::imperial;
        show.inputs[0].position.y = 1.524;  // 5 ft
        document_.replace(show, {}, false);
        LessonWindow window(document_, {}, nullptr);
        auto* distance = part<QDoubleSpinBox>(window, "distance_m");
        QVERIFY(distance->suffix().contains(QStringLiteral("m")));
        QVERIFY(window.show_pair("microphone", "loudspeaker"));
        QCOMPARE(distance->suffix().trimmed(), QStringLiteral("ft"));
        QVERIFY(std::abs(distance->value() - 5.0) < 0.01);
        distance->setValue(10.0);
        QVERIFY(std::abs(window.state().value(Knob::distance) - 3.048) < 0.005);
        QVERIFY2(window.state().sentence().contains(QStringLiteral("' ")), qPrintable(window.state().sentence()));
        window.state().choose(0);  // lessons are told in metres
        QCOMPARE(distance->suffix().trimmed(), QStringLiteral("m"));
    }

    void without_a_device_it_says_so_and_warns_first() {
        LessonWindow window(document_, {}, nullptr);
        auto* hear = part<QPushButton>(window, "hear");
        auto* words = part<QLabel>(window, "sound_words");
        hear->click();
        QCOMPARE(words->text(), sound_caution());
        QVERIFY(words->text().contains(QStringLiteral("headphones")));
        if (why_no_sound().isEmpty()) return;  // a machine with a sound card: nothing is played by a test
        hear->click();
        QCOMPARE(words->text(), why_no_sound());
        QVERIFY(!part<QPushButton>(window, "stop")->isEnabled());
    }

    void the_feed_plays_limited_sound_and_fades() {
        HearOptions options;
        options.seconds = 1.0;
        options.raise_db = *stability_of(plain_bench().show, false).margin_db + 3.0;
        auto sound = LoopSound::prepare(plain_bench().show, options);
        QVERIFY(sound.has_value());
        SoundFeed feed(std::move(*sound));
        std::vector<float> heard;
        const auto take = [&](std::size_t count) {
            while (heard.size() < count) {
                while (feed.bytesAvailable() < 4096) QThread::yieldCurrentThread();
                const QByteArray bytes = feed.read(4096);
                const auto* samples = reinterpret_cast<const float*>(bytes.constData());
                heard.insert(heard.end(), samples, samples + bytes.size() / 4);
            }
        };
        take(96000);
        QVERIFY(std::ranges::all_of(heard, [](float x) { return std::abs(x) < 0.5f; }));
        QVERIFY(std::ranges::all_of(std::span(heard).first(480), [](float x) { return std::abs(x) < 0.01f; }));
        QVERIFY(std::ranges::any_of(heard, [](float x) { return std::abs(x) > 0.1f; }));
        feed.fade_out();
        heard.clear();
        take(24000);
        QVERIFY(std::ranges::all_of(std::span(heard).last(8000), [](float x) { return x == 0.0f; }));
    }

    void full_screen_and_type_size() {
        LessonWindow window(document_, {}, nullptr);
        window.show();
        window.resize(1280, 800);
        const double small = window.font().pointSizeF();
        window.resize(1920, 1080);
        QVERIFY(window.font().pointSizeF() > 1.2 * small);
        part<QPushButton>(window, "full_screen")->click();
        QVERIFY(window.isFullScreen());
        for (QAction* action : window.actions())
            if (action->shortcut() == QKeySequence(Qt::Key_Escape)) action->trigger();
        QVERIFY(!window.isFullScreen());
    }
};

HOWLMAP_TEST(TestLessonWindow)
}  // namespace howlmap::app
#include "test_lesson_window.moc"
