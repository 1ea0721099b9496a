// SPDX-License-Identifier: GPL-3.0-or-later
// A language whose words are two fifths longer and full of accents: on a screen of 1280 x 800 nothing is cut off, and
// no text has been forgotten in English.
#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QDirIterator>
#include <QLabel>
#include <QScrollArea>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QTranslator>

#include "app/settings/language.h"
#include "core/units/translate.h"
#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

constexpr char16_t kAccents[] = u"áƀçđéƒǵĥíĵķĺḿńóṕqŕšťúṽŵẋýž", kCapitals[] = u"ÁƁÇĐÉƑǴĤÍĴĶĹḾŃÓṔQŔŠŤÚṼŴẊÝŽ";

/// The text in the long language: places, tags and the mark of the access key stay.
QString lengthened(const QString& text) {
    QString out;
    int letters = 0;
    QChar until;  // inside a place or a tag
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        if (!until.isNull()) {
            if (c == until) until = {};
        } else if (c == u'{' || c == u'<') {
            until = c == u'{' ? u'}' : u'>';
        } else if (c == u'%' && i + 1 < text.size()) {
            out += c;
            out += text[++i];
            continue;
        } else if ((c >= u'a' && c <= u'z') || (c >= u'A' && c <= u'Z')) {
            ++letters;
            out += QChar(c >= u'a' ? kAccents[c.unicode() - u'a'] : kCapitals[c.unicode() - u'A']);
            continue;
        }
        out += c;
    }
    // The longer part goes before a colon, dots or white space at the end, as words would.
    qsizetype end = out.size();
    while (end > 0 && !out[end - 1].isLetterOrNumber() && out[end - 1] != u'}' && out[end - 1] != u'>') --end;
    QString more;
    for (int i = 0; i < letters * 2 / 5; ++i) more += i % 7 == 6 ? u' ' : u'ö';
    return out.insert(end, more);
}

class LongWords : public QTranslator {
  public:
    using QTranslator::QTranslator;
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* text, const char*, int) const override {
        // Qt's own windows and shortcuts speak their own language.
        if (QLatin1StringView(context).startsWith(QLatin1StringView("Q"))) return {};
        return lengthened(QString::fromUtf8(text));
    }
};

/// What stands in the files of some folders of the program: the words of shows and lessons, which are nobody's to
/// translate.
QByteArray texts_of(std::initializer_list<const char*> folders) {
    QByteArray all;
    for (const char* folder : folders) {
        QDirIterator files(QLatin1StringView(folder), QDir::Files);
        while (files.hasNext())
            if (QFile file(files.next()); file.open(QIODevice::ReadOnly)) all += file.readAll();
    }
    return all;
}

/// The room that a widget's text needs and does not get; empty if it has it.
QString cut_off(const QWidget& widget) {
    QSize need;
    QString text;
    if (const auto* area = qobject_cast<const QScrollArea*>(&widget)) {
        if (!area->widget() || area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) return {};
        const int more = area->widget()->width() - area->viewport()->width();
        return more > 0 ? QStringLiteral("%1 is %2 too narrow for what is in it").arg(area->objectName()).arg(more)
                        : QString();
    }
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        text = label->text();
        if (text.isEmpty() || !label->pixmap().isNull()) return {};
        need = label->wordWrap() ? QSize(label->minimumSizeHint().width(), label->heightForWidth(label->width()))
                                 : label->sizeHint();
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        text = button->text();
        if (text.isEmpty()) return {};
        need = button->sizeHint();
    } else if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
        text = box->currentText();
        QStyleOptionComboBox option;
        option.initFrom(box);
        option.editable = box->isEditable();
        const QRect room =
            box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box);
        const int icon = box->itemIcon(box->currentIndex()).isNull() ? 0 : box->iconSize().width() + 4;
        const int more = box->fontMetrics().horizontalAdvance(text) + icon - room.width();
        need = box->size() + QSize(std::max(0, more), 0);
    } else {
        return {};
    }
    const QSize has = widget.size();
    if (has.width() >= need.width() && has.height() + 1 >= need.height()) return {};  // a pixel of air is no loss
    return QStringLiteral("%1 \"%2\": needs %3 x %4, has %5 x %6")
        .arg(widget.objectName().isEmpty() ? QLatin1StringView(widget.metaObject()->className()) : widget.objectName(),
             text.left(60))
        .arg(need.width())
        .arg(need.height())
        .arg(has.width())
        .arg(has.height());
}

}  // namespace

class TestLongWords : public QObject {
    Q_OBJECT

    static void speak_long_words() {
        QCoreApplication::installTranslator(new LongWords(qApp));
        set_translator([](const char* context, const char* english) {
            return QCoreApplication::translate(context, english).toStdString();
        });
    }

  private Q_SLOTS:
    void cleanup() {
        set_translator({});
        set_decimal_mark('.');
        QLocale::setDefault(QLocale::system());
        QApplication::setLayoutDirection(Qt::LeftToRight);
        qDeleteAll(qApp->findChildren<QTranslator*>());
    }
    void wordsGetLongerAndPlacesStay() {
        QCOMPARE(lengthened(QStringLiteral("&Save as...")), QStringLiteral("&Šáṽé ášöö..."));
        QCOMPARE(lengthened(QStringLiteral("{:.1f} dB by %1")), QStringLiteral("{:.1f} đƁ ƀý %1ö"));
    }
    void nothingIsCutOff_data() {
        QTest::addColumn<bool>("german");
        QTest::addColumn<bool>("reversed");
        QTest::newRow("long") << false << false;
        QTest::newRow("long, from right to left") << false << true;
        QTest::newRow("german") << true << false;
    }
    void nothingIsCutOff() {
        QFETCH(const bool, german);
        QFETCH(const bool, reversed);
        QApplication::setLayoutDirection(reversed ? Qt::RightToLeft : Qt::LeftToRight);
        german ? speak(QLocale(QLocale::German)) : speak_long_words();
        QLocale::setDefault(german ? QLocale(QLocale::German) : QLocale::c());
        QStringList found;
        for_every_window([&](QWidget& window, const QString& name) {
            if (window.window()->width() > 1280 || window.window()->height() > 800)
                found.append(QStringLiteral("%1 is %2 x %3")
                                 .arg(name)
                                 .arg(window.window()->width())
                                 .arg(window.window()->height()));
            for (const QWidget* widget : window.findChildren<QWidget*>())
                if (const QString cut = widget->isVisible() ? cut_off(*widget) : QString(); !cut.isEmpty())
                    found.append(name + QStringLiteral(", ") + cut);
            if (const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES"); !folder.isEmpty())
                window.grab().save(folder +
                                   QStringLiteral("/%1-%2").arg(QLatin1StringView(QTest::currentDataTag()), name) +
                                   QStringLiteral(".png"));
        });
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable(u'\n' + found.join(u'\n')));
    }
    void nothingIsLeftInEnglish() {
        speak_long_words();
        // Words of the show, names of notes and units stand as they are; a sentence of three plain words does not.
        static const QRegularExpression english(QStringLiteral("\\b[a-z]{3,} [a-z]{2,} [a-z]{3,}\\b"));
        QStringList found;
        const QByteArray shows_and_lessons = texts_of({":/examples", ":/lessons", ":/stages", ":/presets"});
        const auto add = [&](const QString& name, const QString& text) {
            if (text.contains(english) &&
                !shows_and_lessons.contains(text.mid(text.indexOf(u". ") == 1 ? 3 : 0).toUtf8()))
                found.append(name + QStringLiteral(": ") + text.left(100));
        };
        for_every_window([&](QWidget& window, const QString& name) {
            for (const QWidget* widget : window.findChildren<QWidget*>()) {
                QStringList texts{widget->toolTip(), widget->accessibleName(), widget->whatsThis(),
                                  widget->statusTip()};
                if (const auto* label = qobject_cast<const QLabel*>(widget)) texts.append(label->text());
                if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) texts.append(button->text());
                if (const auto* box = qobject_cast<const QComboBox*>(widget))
                    for (int i = 0; i < box->count(); ++i) texts.append(box->itemText(i));
                for (const QString& text : texts) add(name, text);
            }
            for (const QAction* action : window.findChildren<QAction*>())
                for (const QString& text : {action->text(), action->statusTip()}) add(name, text);
        });
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable(u'\n' + found.join(u'\n')));
    }
};

HOWLMAP_TEST(TestLongWords)

}  // namespace howlmap::app

#include "test_long_words.moc"
