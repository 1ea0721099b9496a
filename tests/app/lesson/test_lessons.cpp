// SPDX-License-Identifier: GPL-3.0-or-later
// Each lesson is walked through: its task is not solved as it begins, and solved by the way it shows. And refusals name
// the place.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QStandardPaths>

#include "app/document/document.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/lesson_window.h"
#include "core/lesson/words.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QByteArray lesson_with(const char* from, const char* to) {
    QByteArray text = R"({"format": "howlmap-lesson", "version": 1, "id": "x", "title": {"en": "T", "de": "D"},
        "state": {"distance_m": 1}, "steps": [{"text": {"en": "one"}}],
        "task": {"text": {"en": "do"}, "hint": {"en": "so"}, "conditions": [{"figure": "margin_db", "at_least": 6}],
                 "solution": {"level_db": 80}}})";
    return text.replace(from, to);
}

}  // namespace

class TestLessonFile : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void languages() {
        const auto german = read_lesson(lesson_with("", ""), QStringLiteral("de"));
        QVERIFY2(german.has_value(), german ? "" : qPrintable(german.error()));
        QCOMPARE(german->title, QStringLiteral("D"));
        QCOMPARE(german->task, QStringLiteral("do"));  // English where a language is missing
        QCOMPARE(german->state.at(Knob::distance), 1.0);
        QCOMPARE(*german->conditions.front().least, 6.0);
    }
    void refusals_name_the_place_data() {
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* name, const char* from, const char* to, const char* said) {
            QTest::newRow(name) << QByteArray(from) << QByteArray(to) << QString::fromLatin1(said);
        };
        row("no JSON", "{\"format\"", "\"format\"", "at byte");
        row("format", "howlmap-lesson", "song", "/format: found \"song\"");
        row("version", "\"version\": 1", "\"version\": 2", "/version: found 2, expected 1");
        row("knob", "distance_m", "width_m", "/state/width_m");
        row("range", "\"distance_m\": 1", "\"distance_m\": 90",
            "/state/distance_m: found 90, expected a number from 0.2");
        row("step", "[{\"text\": {\"en\": \"one\"}}]", "[{\"text\": {\"en\": 1}}]", "/steps/0/text/en: found 1");
        row("no steps", "[{\"text\": {\"en\": \"one\"}}]", "[]", "/steps: found []");
        row("figure", "margin_db", "luck", "/task/conditions/0/figure: found \"luck\"");
        row("bounds", ", \"at_least\": 6", "", "/task/conditions/0");
        row("key", "\"hint\"", "\"tip\"", "/task/tip");
        row("missing", "\"id\": \"x\",", "", "/id: found nothing, expected a text");
        row("list", "", "", "");
    }
    void refusals_name_the_place() {
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(QString, said);
        const auto read = from.isEmpty() ? read_lesson("[1]", QStringLiteral("en"))
                                         : read_lesson(lesson_with(from, to), QStringLiteral("en"));
        QVERIFY(!read.has_value());
        QVERIFY2(read.error().contains(said), qPrintable(read.error()));
    }
    void all_that_come_with_the_program_read() {
        QStringList errors;
        QCOMPARE(shipped_lessons(&errors).size(), std::size_t{9});
        QVERIFY2(errors.isEmpty(), qPrintable(errors.join(u'\n')));
    }
};

class TestGuidedLessons : public QObject {
    Q_OBJECT
    template <class T>
    static T* part(LessonWindow& window, const char* name) {
        return window.findChild<T*>(QString::fromLatin1(name));
    }
  private Q_SLOTS:
    void walked_through_data() {
        QTest::addColumn<int>("lesson");
        int index = 0;
        for (const Lesson& lesson : shipped_lessons()) QTest::newRow(qPrintable(lesson.id)) << index++;
    }
    void walked_through() {
        QFETCH(int, lesson);
        Document document;
        LessonWindow window(document, {}, nullptr);
        LessonState& state = window.state();
        auto* chooser = part<QComboBox>(window, "lesson");
        chooser->setCurrentIndex(lesson + 1);
        Q_EMIT chooser->activated(lesson + 1);
        QCOMPARE(state.lesson(), lesson);
        const Lesson& script = state.lessons()[static_cast<std::size_t>(lesson)];
        for (const LessonStep& step : script.steps) {
            QCOMPARE(part<QLabel>(window, "lesson_text")->text(), step.text);
            QVERIFY(!state.at_task() && !state.solved());
            QVERIFY(part<QPushButton>(window, "solution")->isHidden());
            part<QPushButton>(window, "next")->click();
        }
        QVERIFY(state.at_task());
        QCOMPARE(part<QLabel>(window, "lesson_text")->text(), script.task);
        QVERIFY2(!state.solved(), "the task is solved before anything was done");
        const QString not_yet = part<QLabel>(window, "verdict")->text();
        part<QPushButton>(window, "hint")->click();
        QCOMPARE(part<QLabel>(window, "hint_text")->text(), script.hint);
        part<QPushButton>(window, "solution")->click();
        QVERIFY2(state.solved(), "the way that is shown does not solve the task");
        QVERIFY(part<QLabel>(window, "verdict")->text() != not_yet);
        part<QPushButton>(window, "again")->click();
        QVERIFY(!state.solved());
        QCOMPARE(part<QLabel>(window, "verdict")->text(), not_yet);
        part<QPushButton>(window, "back")->click();
        QVERIFY(!state.at_task());
    }
    void the_sentence_is_that_of_the_core() {
        Document document;
        LessonWindow window(document, {}, nullptr);
        LessonState& state = window.state();
        auto* sentence = part<QLabel>(window, "sentence");
        for (int k = 0; k < kKnobs; ++k) {
            const auto knob = static_cast<Knob>(k);
            state.set_bench(plain_bench());
            const Bench before = state.bench();
            const double to =
                value_of(before, knob) == range_of(knob).most ? range_of(knob).least : range_of(knob).most;
            state.turn(knob, to);
            if (state.bench() == before) continue;  // sound holes of a microphone
            const std::string said =
                what_changed(knob, before, figures_of(before), state.bench(), figures_of(state.bench()));
            QCOMPARE(sentence->text(), QString::fromStdString(said));
        }
    }
};

HOWLMAP_TEST(TestLessonFile)
HOWLMAP_TEST(TestGuidedLessons)
}  // namespace howlmap::app
#include "test_lessons.moc"
