// SPDX-License-Identifier: GPL-3.0-or-later
// From the open show to the lesson, and the sound of the whole stage.
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/lesson/hear_window.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/lesson_window.h"
#include "app/window/action_table.h"
#include "app/window/main_window.h"
#include "core/audio/recording.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

Show two_singers() {
    Show show = plain_bench().show;
    Loudspeaker other = show.loudspeakers[0];
    other.id = "second", other.position.x = 2.0;
    show.loudspeakers.push_back(other);
    Input voice = show.inputs[0];
    voice.id = "voice", voice.channel = 2, voice.position.x = 2.0;
    show.inputs.push_back(voice);
    Mix mix = show.mixes[0];
    mix.id = "two", mix.number = 2, mix.loudspeakers = {"second"}, mix.sends[0].input = "voice";
    mix.sends[0].level_db -= 6.0;
    show.mixes.push_back(mix);
    return show;
}

}  // namespace

class TestShowAndLesson : public QObject {
    Q_OBJECT
    template <class T>
    static T* part(QWidget* window, const char* name) {
        return window->findChild<T*>(QString::fromLatin1(name));
    }

  private Q_SLOTS:
    void the_selected_pair_or_the_first_ring() {
        MainWindow window;
        QSignalSpy updated(&window.analysis(), &AnalysisService::updated);
        window.document().replace(two_singers(), {}, false);
        QVERIFY(updated.wait(20000));
        const auto shown = [&] { return window.findChild<LessonWindow*>()->state().bench(); };
        window.actions_table().at("lesson.show")->trigger();
        QCOMPARE(shown().loudspeaker, window.analysis().result()->rings.front().strongest_loudspeaker);
        QVERIFY(window.findChild<LessonWindow*>()->isVisible());
        window.selection().set({QStringLiteral("voice"), QStringLiteral("second")});
        window.actions_table().at("lesson.show")->trigger();
        QCOMPARE(shown().loudspeaker, std::string("second"));
        QCOMPARE(input_of(shown()).id, std::string("voice"));
        window.selection().set({QStringLiteral("microphone")});
        window.actions_table().at("lesson.show")->trigger();
        QCOMPARE(input_of(shown()).id, std::string("microphone"));
    }
    void without_a_loop_it_says_so() {
        MainWindow window;
        window.document().replace(Show{}, {}, false);
        window.actions_table().at("lesson.show")->trigger();
        QVERIFY(!window.findChild<LessonWindow*>());
        QVERIFY(!part<QLabel>(&window, "message")->text().isEmpty());
        window.actions_table().at("lesson.open")->trigger();
        QVERIFY(window.findChild<LessonWindow*>()->isVisible());
    }
    void the_stage_is_written_as_sound() {
        QTemporaryDir folder;
        MainWindow window;
        window.document().replace(two_singers(), {}, false);
        window.actions_table().at("lesson.hear")->trigger();
        auto* hear = window.findChild<HearWindow*>();
        QVERIFY(hear && hear->isVisible());
        QCOMPARE(part<QComboBox>(hear, "input")->count(), 3);
        QCOMPARE(part<QComboBox>(hear, "source")->count(), 4);
        auto* words = part<QLabel>(hear, "words");
        hear->use_recording(folder.filePath(QStringLiteral("absent.wav")));
        QTRY_VERIFY(words->text().contains(QStringLiteral("absent.wav")) &&
                    !words->text().endsWith(u'.' + QString(2, u'.')));
        const std::string source = folder.filePath(QStringLiteral("in.wav")).toStdString();
        QVERIFY(write_mono(source, 48000, std::vector<float>(24000, 0.1f)).has_value());
        hear->use_recording(QString::fromStdString(source));
        QTRY_COMPARE(part<QComboBox>(hear, "source")->currentIndex(), 3);
        const QString out = folder.filePath(QStringLiteral("out.wav"));
        hear->write(out);
        QVERIFY(!part<QPushButton>(hear, "write")->isEnabled());
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>(hear, "write")->isEnabled(), 30000);
        const auto written = read_mono(out.toStdString(), 60.0);
        QVERIFY(written.has_value());
        QCOMPARE(written->samples.size(), std::size_t{48000 * 7 / 2});  // the recording and three seconds
        for (const float x : written->samples) QVERIFY(std::abs(x) <= 0.5f);
        // Another recording is read while a file is written: both come to their end.
        const QString second = folder.filePath(QStringLiteral("second.wav"));
        hear->write(second);
        hear->use_recording(QString::fromStdString(source));
        QVERIFY(!part<QPushButton>(hear, "write")->isEnabled());
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>(hear, "write")->isEnabled(), 30000);
        QVERIFY(QFile::exists(second));
        hear->write(folder.filePath(QStringLiteral("no/folder/out.wav")));
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>(hear, "write")->isEnabled(), 30000);
        QVERIFY(words->text().contains(QStringLiteral("out.wav")));
    }
};

HOWLMAP_TEST(TestShowAndLesson)
}  // namespace howlmap::app
#include "test_show_and_lesson.moc"
