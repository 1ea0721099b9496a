// SPDX-License-Identifier: GPL-3.0-or-later
// Every step of every lesson has room on a small and on a large screen, light and dark, in both languages.
// HOWLMAP_PICTURES=FOLDER keeps the pictures.
#include <QAbstractButton>
#include <QDir>
#include <QLabel>
#include <QPushButton>
#include <QTranslator>

#include "app/document/document.h"
#include "app/lesson/crest_picture.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/lesson_window.h"
#include "app/settings/language.h"
#include "app/settings/preferences.h"
#include "app/settings/theme.h"
#include "core/units/translate.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestLessonRoom : public QObject {
    Q_OBJECT

    static void keep_picture(QWidget& window, const QString& name) {
        const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES");
        if (!folder.isEmpty()) window.grab().save(QDir(folder).filePath(name + QStringLiteral(".png")));
    }

    /// What needs more room than it has: labels that wrap, buttons, boxes.
    static QStringList cut_off(const LessonWindow& window) {
        QStringList found;
        const auto check = [&](const QWidget& widget, const QString& text, QSize need) {
            if (!widget.isVisible() || text.isEmpty()) return;
            if (widget.height() + 1 < need.height() || widget.width() < need.width())
                found.append(QStringLiteral("%1 \"%2\" needs %3 x %4, has %5 x %6")
                                 .arg(widget.objectName(), text.left(40))
                                 .arg(need.width())
                                 .arg(need.height())
                                 .arg(widget.width())
                                 .arg(widget.height()));
        };
        for (const QLabel* label : window.findChildren<QLabel*>())
            check(*label, label->text(),
                  label->wordWrap() ? QSize(label->minimumSizeHint().width(), label->heightForWidth(label->width()))
                                    : label->sizeHint());
        for (const QAbstractButton* button : window.findChildren<QAbstractButton*>())
            check(*button, button->text(), button->sizeHint());
        return found;
    }

    static int shade(const QImage& picture, int x, int y) { return qAlpha(picture.pixel(x, y)); }

  private Q_SLOTS:
    void crests_stand_whole_waves_from_the_loudspeaker() {
        CrestPicture crests;
        const CrestPicture::Place place{{400, 200}, {50.0, 100.0}, 100.0};
        std::vector<double> all_round(72, 1.0), ahead(72, 0.0);
        for (const int k : {-2, -1, 0, 1, 2}) ahead[static_cast<std::size_t>((k + 72) % 72)] = 1.0;
        const auto draw = [&](const std::vector<double>& fan, double phase, bool bounce) {
            return crests.draw(place, {&fan, 1.0, phase, bounce, Qt::black}).copy();
        };
        const QImage still = draw(all_round, 0.0, false);
        for (const int waves : {1, 2, 3}) QVERIFY(shade(still, 50 + 100 * waves, 100) > 80);
        QVERIFY(shade(still, 50, 0) > 80);  // straight up, one wave
        for (const int x : {100, 200, 300}) QCOMPARE(shade(still, x, 100), 0);
        QVERIFY(shade(draw(all_round, 0.5, false), 100, 100) > 80);  // half a turn later they are half-way
        const QImage narrow = draw(ahead, 0.0, false);
        QVERIFY(shade(narrow, 150, 100) > 80);
        QCOMPARE(shade(narrow, 50, 0), 0);  // nothing leaves upwards
        // The floor is 1 m below: what it sends back comes from 2 m below the loudspeaker, dotted.
        const QImage both = draw(all_round, 0.0, true);
        int dots = 0, gaps = 0;
        for (int x = 51; x < 300; ++x) {
            const double far = std::hypot(x + 0.5 - 50.0, 200.0), next = 100.0 * std::ceil(far / 100.0);
            const double y = 300.0 - std::sqrt(std::max(0.0, next * next - (x + 0.5 - 50.0) * (x + 0.5 - 50.0)));
            if (y < 0.0 || y >= 199.0 || shade(still, x, static_cast<int>(y)) > 0) continue;
            (shade(both, x, static_cast<int>(y)) > 40 ? dots : gaps)++;
        }
        QVERIFY2(dots > 20 && gaps > 20, qPrintable(QStringLiteral("%1 dots, %2 gaps").arg(dots).arg(gaps)));
    }

    void a_large_picture_is_drawn_coarser() {
        CrestPicture crests;
        const std::vector<double> fan(72, 1.0);
        const QImage& large = crests.draw({{3000, 1500}, {0.0, 750.0}, 600.0}, {&fan, 0.05, 0.0, true, Qt::black});
        QVERIFY(large.width() < 1000 && std::abs(large.width() - 2 * large.height()) <= 2);
    }

    void cleanup() {
        set_translator({});
        set_decimal_mark('.');
        QLocale::setDefault(QLocale::c());
        qDeleteAll(qApp->findChildren<QTranslator*>());
        apply_look(Look::light);
    }

    void everything_can_be_read_data() {
        QTest::addColumn<bool>("german");
        QTest::addColumn<bool>("dark");
        QTest::addColumn<QSize>("size");
        for (const bool german : {false, true})
            for (const bool dark : {false, true}) {
                if (dark && !qEnvironmentVariableIsSet("HOWLMAP_PICTURES")) continue;  // takes the same room
                for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)})
                    QTest::addRow("%s-%s-%d", german ? "de" : "en", dark ? "dark" : "light", size.width())
                        << german << dark << size;
            }
    }
    void everything_can_be_read() {
        QFETCH(bool, german);
        QFETCH(bool, dark);
        QFETCH(QSize, size);
        if (german) QLocale::setDefault(QLocale(QLocale::German)), speak(QLocale(QLocale::German));
        apply_look(dark ? Look::dark : Look::light);
        Document document;
        LessonWindow window(document, {}, nullptr);
        window.resize(size);
        window.show();
        LessonState& state = window.state();
        QStringList found;
        for (int lesson = -1; lesson < static_cast<int>(state.lessons().size()); ++lesson) {
            state.choose(lesson);
            const int steps =
                lesson < 0 ? 0 : static_cast<int>(state.lessons()[static_cast<std::size_t>(lesson)].steps.size());
            for (int step = 0; step <= steps; ++step) {
                state.go_to(step);
                if (state.at_task()) window.findChild<QPushButton*>(QStringLiteral("hint"))->click();
                QCoreApplication::processEvents();
                const QString name = QStringLiteral("%1-%2-%3")
                                         .arg(QLatin1StringView(QTest::currentDataTag()))
                                         .arg(lesson + 1)
                                         .arg(step + 1);
                QCOMPARE(window.size(), size);  // it did not have to grow
                for (const QString& text : cut_off(window)) found.append(name + QStringLiteral(": ") + text);
                if (step == 0 || step == steps) keep_picture(window, name);
            }
        }
        QVERIFY2(found.isEmpty(), qPrintable(found.join(u'\n')));
    }
};

HOWLMAP_TEST(TestLessonRoom)
}  // namespace howlmap::app
#include "test_lesson_room.moc"
