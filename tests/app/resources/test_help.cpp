// SPDX-License-Identifier: GPL-3.0-or-later
// The help has the same pages and the same places in both languages, and no link leads nowhere.
#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include "tests/support/registry.h"

namespace {

QDir folder_of_help(const QString& language) {
    return QDir(QStringLiteral(HOWLMAP_SOURCE_DIR "/resources/help/") + language);
}

QStringList pages(const QString& language) { return folder_of_help(language).entryList({QStringLiteral("*.html")}); }

QStringList found(const QString& language, const QString& page, const char* pattern) {
    QFile file(folder_of_help(language).filePath(page));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QStringList all;
    const QRegularExpression expression(QString::fromLatin1(pattern));
    for (auto it = expression.globalMatch(QString::fromUtf8(file.readAll())); it.hasNext();)
        all << it.next().captured(1);
    return all;
}

QStringList places(const QString& language, const QString& page) {
    return found(language, page, "<a name=\"([^\"]+)\"");
}

}  // namespace

class HelpTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void same_in_both_languages() {
        QVERIFY(pages(QStringLiteral("en")).size() >= 13);
        QCOMPARE(pages(QStringLiteral("de")), pages(QStringLiteral("en")));
        for (const QString& page : pages(QStringLiteral("en")))
            QCOMPARE(places(QStringLiteral("de"), page), places(QStringLiteral("en"), page));
    }

    void no_dead_link_data() {
        QTest::addColumn<QString>("language");
        QTest::newRow("English") << QStringLiteral("en");
        QTest::newRow("German") << QStringLiteral("de");
    }

    void no_dead_link() {
        QFETCH(QString, language);
        for (const QString& page : pages(language)) {
            for (const QString& link : found(language, page, "href=\"([^\"]+)\"")) {
                const QString target = link.section(u'#', 0, 0), place = link.section(u'#', 1);
                QVERIFY2(pages(language).contains(target), qPrintable(page + u' ' + link));
                QVERIFY2(place.isEmpty() || places(language, target).contains(place), qPrintable(page + u' ' + link));
            }
        }
    }
};

HOWLMAP_TEST(HelpTest)
#include "test_help.moc"
