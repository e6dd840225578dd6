package hutchleaf.proof;

import static hutchleaf.proof.SyllableRule.adds;
import static hutchleaf.proof.SyllableRule.drops;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How English spelling tells its syllables: a word has as many as it has groups of vowels, more or less what the rules
 * below say, and at least one. The rules are our own; the dictionary they are measured against stays in the tests.
 */
final class SyllableRules {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    /** Words that keep their silent e when they open another word: livestock, homework, foreleg. */
    private static final String FIRST_PARTS = "base|blue|eye|fire|fore|grape|grave|home|horse|house|lake|life|live|make"
            + "|nine|note|peace|race|safe|scape|share|side|some|space|spoke|stone|store|take|trade|type|ware|white|whole"
            + "|wire";

    /** Words before which the word in front keeps its silent e: firewood, sideways, policeman. */
    private static final String SECOND_PARTS =
            "back|berr|boar|book|bone|break|craft|down|foot|hair|hart$|hold|hous|keep"
                    + "|land$|let$|line|maker|man$|mann$|men$|more|port|stead|stone|taker|time|ville|way|where|wise$|wood"
                    + "|wor[dkt]";

    /** An e that no one says. */
    private static final List<SyllableRule> SILENT_E = List.of(
            drops("(?<=[^aeiouy])e$", "cake 1, mane 1, vaccine 2"),
            drops("(?<=[^aeiouyszxcgh])es$", "capes 1, makes 1, times 1"),
            drops("(?<=th)es$", "clothes 1, breathes 1"),
            drops("(?<=[^aeiouydlt])ed$", "groomed 1, scratched 1, cleaned 1"),
            drops("(?<=[aeiouyrlw]l)ed$", "curled 1, called 1, failed 1"),
            drops("(?:[aeioun]gue|que)[sd]?$", "league 1, tongue 1, unique 2, plagued 1"),
            drops("ye[sd]?$", "dye 1, eyes 1, dyed 1"),
            drops(
                    "^(?:" + FIRST_PARTS + ")(?=[^aeiounry])(?!d$|s$)"
                            + "|[aeiouy][^aeiouy]{1,2}e(?=" + SECOND_PARTS + "|s[bmvw])"
                            + "|[aeiouy][^aeiouyl]+e(?=ly|ness|ment|ful|less)"
                            + "|[aeiouy]le(?=ly|ness|ful|less)",
                    "livestock 2, homes 1, likewise 2, policeman 3, safely 2, statement 2, useful 2, wholeness 2"));

    /** Consonants that are a syllable of their own. */
    private static final List<SyllableRule> CONSONANTS = List.of(
            adds("(?<=[^aeiouyrlw])les?$", "apple 2, angle 2, tables 2, muscle 2"),
            adds("[bcdfgkpt]res?$", "acre 2, litres 2, fibre 2"),
            adds("[cdt]red$", "hundred 2, sacred 2, hatred 2"),
            adds("(?:s|th)ms?$", "prism 2, rhythm 2, organisms 4"),
            adds("^mc", "mcrabbit 3, mchutch 2"));

    /** The y as a consonant between two vowels, or as a vowel of its own before another. */
    private static final List<SyllableRule> Y = List.of(
            adds("[aeiou]y(?=[aeiou])", "player 2, royal 2, mayor 2"),
            adds("[^aeiouw]y(?=[aeiou])(?!a$|ard|o)", "flying 2, dryer 2, hyena 3, backyard 2, canyon 2"),
            adds("ryo|y(?=one)", "embryo 3, cryogenic 4, anyone 3"));

    /** Pairs with i that are two syllables, against soft ones such as social, nation, million. */
    private static final List<SyllableRule> PAIRS_OF_I = List.of(
            adds("(?<![cgst])(?<!ll)ia(?!ge|r$|ri[tz])", "media 3, dial 2, mammalian 4, familiar 3, carriage 2"),
            adds("[cgst]iat(?=[ei])", "initiate 4, association 5"),
            adds("^(?:gia(?=nts?$)|[st]ia(?=[mr]))", "giant 2, tiara 3, siamese 3"),
            adds("sias[mt]", "enthusiasm 5, enthusiastic 5"),
            adds("(?<![cgnst])(?<!ll|sh|av)io", "lion 2, period 3, biology 4, behavior 3, million 2"),
            adds("[cgst]ios?$", "radio 3, ratio 3, patios 3"),
            adds("[cs]io(?=lo|p)", "sociology 5, physiology 5"),
            adds("nio(?![nr])", "opinion 3, senior 2, harmonious 4"),
            adds("iu", "medium 3, radius 3"),
            adds("[aeiouy][^aeiouy]+ie(?:rs?|st)$", "healthier 3, carriers 3, earliest 3"),
            adds("(?<![cnt])ie(?=n[cnt])|tie(?=th$)", "client 2, experience 4, orientation 5, fortieth 3, patient 2"),
            adds("scie(?=n)", "science 2, scientist 3"),
            adds("[cdlprux]ie(?=t(?:$|[yi]|ly|s$|ed))", "diet 2, quietly 3, society 4, varieties 4"),
            adds("ie(?=ll)", "gabriella 4"));

    /** Pairs with another vowel first. */
    private static final List<SyllableRule> OTHER_PAIRS = List.of(
            adds("[ao](?=ic(?![eh]))", "mosaic 3, heroic 3, choice 1"),
            adds("a(?=ue)|e(?=ie|ue)", "sauerkraut 3"),
            adds("(?<!ch|g)eo(?!ff|pard|pl|ne|ut|ver|wn)", "video 3, museology 5, people 2, pigeon 2, moreover 3"),
            adds("^geo(?!r)", "geology 4, geography 4"),
            adds("[^aeiouy]e(?=u[ms]$)", "museum 3, nucleus 3"),
            adds("[aeiouy][^aeiouys]+eas?$", "area 3, areas 3, idea 3, oversea 3"),
            adds("(?:[eo]|(?<![gq])u)(?=ings?$|ism)", "seeing 2, going 2, heroism 4, truism 3"),
            adds("cre(?=at(?!ure))", "create 2, recreation 4, creature 2"),
            adds("re(?=al(?:i|t))", "reality 4, realtor 3"),
            adds("o(?=as?$)", "boa 2, protozoa 4"),
            adds("po(?=e[mt])|[dg]o(?=ers?$)", "poem 2, poetry 3, doers 2"),
            adds("^zo(?=o[gln])", "zoology 4, zoonosis 4"),
            adds("[dlnrt]u(?=[ao]|e[a-ru-z])", "actual 3, manual 3, continuous 4, cruel 2, influence 3"),
            adds("[cgs]u(?=ous)|[sx]u(?=al)", "ambiguous 4, visual 3"),
            adds("(?<!q)u(?=it(?:ie|io|iv|ou|y))", "fruition 3, annuity 4, equity 3"),
            adds("[lr]u(?=i(?:d|n(?!g)))", "fluid 2, ruin 2"));

    /** Prefixes that end in a vowel, before a word that begins with one. */
    private static final List<SyllableRule> PREFIXES = List.of(
            adds(
                    "^re(?=a(?:ct|d[jm]|ff|ll|pp|rr|ss|waken)|e(?:du|le|m|n|st|v|x)|i(?:gn|mb|mp|n[fstv]|te)|u[ns])",
                    "react 2, reappear 3, reelect 3, reinforce 3, reuse 2, reach 1"),
            adds("^pre(?=a[dmr]|e[lmx]|i[gm])", "prearrange 3, preexist 3, preach 1"),
            adds("^co(?=e[dfqrx]|inc|opera|ord|au|ali)", "coexist 3, coincide 3, cooperate 4, coordinate 4, coach 1"),
            adds("^(?:anti|multi)(?=[aeo])", "antiaircraft 4"));

    /** Of two ways to say a word the shorter counts (Flesch's step list). */
    private static final List<SyllableRule> SHORTER = List.of(
            drops("ical(?=ly)", "physically 3, basically 3"),
            drops("(?:[rt]al|il|rn)i(?=ans?$)", "italian 3, civilians 3, mammalian 4, californian 4"),
            drops("(?<=t)empe(?=ra)", "temperature 3, temperament 3"),
            drops("^eve(?=ry)|^busi(?=ness)", "everyone 3, business 2"));

    /** Loan words that say their last e. */
    private static final List<SyllableRule> LOANS = List.of(adds("nte$", "andante 3"));

    static final List<SyllableRule> ALL = Stream.of(
                    SILENT_E, CONSONANTS, Y, PAIRS_OF_I, OTHER_PAIRS, PREFIXES, SHORTER, LOANS)
            .flatMap(List::stream)
            .toList();

    private SyllableRules() {}

    /** The syllables of one word without hyphens, in the letters a to z. */
    static int syllables(String word) {
        int groups = (int) VOWELS.matcher(word).results().count();
        return Math.max(1, groups + ALL.stream().mapToInt(rule -> rule.in(word)).sum());
    }
}
